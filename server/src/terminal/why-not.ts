import { named, phrase, type Phrase } from '../wording/phrase.ts'
import { CouldNotRun } from './could-not-run.ts'

/** Why a file could not be written, as words behind a colon. */
export const whyNotWritten = ({ code = '' }: NodeJS.ErrnoException): Phrase =>
  ofWriting[code] ?? ofBoth[code] ?? named(code)

/** The same of a file that was there a moment ago. */
export const whyNotRewritten = (error: NodeJS.ErrnoException): Phrase =>
  error.code === 'ENOENT' ? whyNotRead(error) : whyNotWritten(error)

/** The same of reading. */
export const whyNotRead = ({ code = '' }: NodeJS.ErrnoException): Phrase =>
  ofReading[code] ?? ofBoth[code] ?? named(code)

/**
 * Waits for a file to be written.
 *
 * @param name  of the file, as the person knows it
 * @throws CouldNotRun  where it cannot be
 */
export const writing = (name: string, write: Promise<void>): Promise<void> =>
  write.catch((error: NodeJS.ErrnoException) => {
    throw new CouldNotRun(phrase`${name} cannot be written: ${whyNotWritten(error)}`)
  })

type Reasons = Readonly<Record<string, Phrase>>

const ofBoth: Reasons = {
  EISDIR: phrase`it is a folder`,
  ENOTDIR: phrase`a part of its path is a file, not a folder`,
}

const notWritable = phrase`you have no permission to write there`
const ofWriting: Reasons = {
  ENOENT: phrase`its folder does not exist`,
  EACCES: notWritable,
  EPERM: notWritable,
  EROFS: phrase`the disk is read-only`,
  ENOSPC: phrase`the disk is full`,
}

const notReadable = phrase`you have no permission to open it`
const ofReading: Reasons = {
  ENOENT: phrase`it does not exist`,
  EACCES: notReadable,
  EPERM: notReadable,
}
