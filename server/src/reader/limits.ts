import { inCatalogue } from '../wording/phrase.ts'

/** More bytes than any datasheet has. */
export const mostBytes = 50e6

export const tooLarge = inCatalogue`it has more than 50 MB`

/** Pictures and all: a sheet of some pages unpacks to a tenth of it [bytes]. */
export const mostUnpacked = 300e6

export const unpacksTooLarge = inCatalogue`unpacked it has more than 300 MB`

/** Longer than any datasheet takes; a reader that starts first loads the library. */
export const readingSeconds = 5
export const startingSeconds = 3

export const tookTooLong = inCatalogue`reading it took more than 5 s`
