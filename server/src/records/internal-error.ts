import { phrase } from '../wording/phrase.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { reading } from './facts.ts'

/** A mistake of our own, in place of whatever it stopped. Says nothing of what was thrown but its type: that may quote the record. */
export function internalError(thrown: unknown): Finding {
  const type = thrown instanceof Error ? thrown.constructor.name : typeof thrown
  const found = finding(
    reading.internal,
    { pointer: '', span: { start: 0, end: 0 } },
    phrase`Wattproof stopped at an error of its own (${type}) while checking this file: please report it with its version and, if you may share it, the file.`,
  )
  return { ...found, trace: [type, ...framesOf(thrown)].join('\n') }
}

/** The lines of a stack that name places in the program, without what was said of the mistake. */
function framesOf(thrown: unknown): readonly string[] {
  if (!(thrown instanceof Error)) return []
  const { stack = '', message } = thrown
  const behind = stack.includes(message) ? stack.indexOf(message) + message.length : 0
  return stack
    .slice(behind)
    .split('\n')
    .filter((line) => line.startsWith('    at '))
}
