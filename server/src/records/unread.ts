import { phrase, type Phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { reading } from './facts.ts'

/** A file that is there and was not read, and why, in words that follow "was not read:". */
export interface Unread {
  readonly because: Phrase
}

/** What a library holds of a file. */
export type FileText = string | Unread

export function notRead(what: 'file' | 'folder', { because }: Unread): Finding {
  return finding(
    reading.notRead,
    { pointer: '', span: { start: 0, end: 0 } },
    what === 'file' ? phrase`This file was not read: ${because}.` : phrase`This folder was not read: ${because}.`,
  )
}
