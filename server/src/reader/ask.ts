import type { ChildProcess } from 'node:child_process'
import { fork } from 'node:child_process'
import { unreadable, type Sheet } from '../sheets/sheet.ts'
import { readingSeconds, startingSeconds, tookTooLong } from './limits.ts'
import { memoryOf } from './memory.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** Reads sheets in a process of its own, one after the other. */
export interface Reader {
  /** Never rejects; `lasting` is false where the sheet might be read another time. */
  read(bytes: Uint8Array): Promise<{ readonly sheet: Sheet; readonly lasting: boolean }>
  /** Ends the process, if there is one. */
  end(): void
}

const megabytes = 300
/** What the process takes before it reads, the library included. */
const atRest = 150
/** How often its memory is looked at [ms]: a buffer outside of the heap grows by some hundred megabytes in that time. */
const often = 100
const tookTooMuch = inCatalogue`reading it took more than 300 MB`

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
      const finish = (sheet: Sheet, lasting: boolean) => {
        clearTimeout(timer)
        clearInterval(watch)
        reader.removeAllListeners()
        resolve({ sheet, lasting })
      }
      const fail = (problem: string) => {
        stop()
        finish(unreadable(problem), false)
      }
      // a new process first loads the library
      const timer = setTimeout(() => fail(tookTooLong), 1000 * (readingSeconds + (fresh ? startingSeconds : 0)))
      const watch = setInterval(() => {
        if ((memoryOf(reader.pid ?? 0) ?? 0) > 1e6 * (atRest + megabytes)) fail(tookTooMuch)
      }, often)
      reader.once('message', (sheet) => finish(sheet as Sheet, true))
      reader.once('exit', () => fail(tookTooMuch))
      reader.once('error', () => fail(inCatalogue`the reading process did not start`))
      reader.send({ bytes }, (error) => error && fail(inCatalogue`the reading process did not start`))
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
