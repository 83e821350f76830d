import type { ChildProcess } from 'node:child_process'
import { fork } from 'node:child_process'
import { unreadable, type Sheet } from '../sheets/sheet.ts'
import { readingSeconds, startingSeconds, tookTooLong } from './limits.ts'

/** Reads sheets in a process of its own, one after the other. */
export interface Reader {
  /** Never rejects; `lasting` is false where the sheet might be read another time. */
  read(bytes: Uint8Array): Promise<{ readonly sheet: Sheet; readonly lasting: boolean }>
  /** Ends the process, if there is one. */
  end(): void
}

const megabytes = 300

/** @param program  the file of the reading process */
export function createReader(program: string): Reader {
  let child: ChildProcess | null = null
  let last: Promise<unknown> = Promise.resolve()
  const stop = () => {
    child?.kill('SIGKILL')
    child = null
  }
  return {
    read(bytes) {
      const answer = last.then(() => one(bytes))
      last = answer
      return answer
    },
    end: stop,
  }

  function one(bytes: Uint8Array): Promise<{ sheet: Sheet; lasting: boolean }> {
    const fresh = child === null
    const reader = (child ??= start())
    return new Promise((resolve) => {
      const settle = (sheet: Sheet, lasting: boolean) => {
        clearTimeout(timer)
        reader.removeAllListeners()
        resolve({ sheet, lasting })
      }
      const fail = (problem: string) => {
        stop()
        settle(unreadable(problem), false)
      }
      // a new process first loads the library
      const timer = setTimeout(() => fail(tookTooLong), 1000 * (readingSeconds + (fresh ? startingSeconds : 0)))
      reader.once('message', (sheet) => settle(sheet as Sheet, true))
      reader.once('exit', () => fail(`reading it took more than ${megabytes} MB`))
      reader.once('error', () => fail('the reading process did not start'))
      reader.send({ bytes }, (error) => error && fail('the reading process did not start'))
    })
  }

  function start(): ChildProcess {
    const options = ['--max-old-space-size=' + megabytes, '--disallow-code-generation-from-strings']
    const reader = fork(program, [], {
      execArgv: options,
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    })
    reader.unref()
    reader.channel?.unref?.()
    return reader
  }
}
