// The real log writer is compiled from C++. The logs of a test are small: every line is appended at once.
import { appendFileSync, mkdirSync } from 'node:fs'
import { dirname } from 'node:path'

export const version = 0
export const setLevel = () => {}
export const setFlushOn = () => {}
export const createRotatingLogger = async (_name, path) => logger(path)
export const createAsyncRotatingLogger = createRotatingLogger

const levels = { trace: 'trace', debug: 'debug', info: 'info', warn: 'warning', error: 'error', critical: 'critical' }
const nothing = () => {}

function logger(path) {
  let plain = false
  mkdirSync(dirname(path), { recursive: true })
  const write = (level) => (message) => {
    const stamp = `${new Date().toISOString().slice(0, 23).replace('T', ' ')} [${level}] `
    try {
      appendFileSync(path, plain ? message : `${stamp}${message}\n`)
    } catch {
      // the folder goes away while the host is ending
    }
  }
  return {
    ...Object.fromEntries(Object.entries(levels).map(([method, level]) => [method, write(level)])),
    clearFormatters: () => (plain = true),
    getLevel: () => 0,
    setPattern: nothing,
    setLevel: nothing,
    flush: nothing,
    drop: nothing,
  }
}
