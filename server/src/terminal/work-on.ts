import { checkShare } from './check-all.ts'
import { rowsOfShare } from './compare/rows-on.ts'
import type { Share } from './share.ts'

/** What a thread does with its share. */
export const workOn = (share: Share) => ('panels' in share ? rowsOfShare(share) : checkShare(share))
