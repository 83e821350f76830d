import { execFile } from 'node:child_process'
import {
  appendFileSync,
  mkdirSync,
  readdirSync,
  lstatSync,
  readFileSync,
  realpathSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { availableParallelism } from 'node:os'
import { dirname, join } from 'node:path'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { createSheets } from '../reader/kept.ts'
import { readSafely, refusal, type Disk } from '../library/read-safely.ts'
import { checkShare } from './check-all.ts'
import { main } from './main.ts'
import type { Share } from './share.ts'
import type { Standing, World } from './world.ts'

const { argv, env, stdout } = process
const file = realpathSync(argv[1] as string)
const program = dirname(file)
const now = new Date()

/** Escapes only for a terminal that wants them; FORCE_COLOR is for continuous integration that shows colours. */
const colour = !env.NO_COLOR && ((env.FORCE_COLOR ?? '0') !== '0' || (stdout.isTTY && env.TERM !== 'dumb'))

/** Inside a hook git names its own folder relative to another one than ours. */
const outsideHook = {
  ...env,
  GIT_DIR: undefined,
  GIT_WORK_TREE: undefined,
  GIT_INDEX_FILE: undefined,
  GIT_PREFIX: undefined,
}

const disk: Disk = {
  real: (path) => realpathSync.native(path).replaceAll('\\', '/'),
  about: (path) => statSync(path),
  isLink: (path) => lstatSync(path).isSymbolicLink(),
  read: (path) => withoutMark(readFileSync(path, 'utf8')),
}

/** Files are read and written without waiting in between: a process that does nothing else meanwhile is the faster for it. */
const world: World = {
  args: argv.slice(2),
  cwd: process.cwd(),
  env,
  home: dirname(program),
  today: [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-'),
  colour,
  width: stdout.columns || Number(env.COLUMNS) || 100,
  out: (text) => {
    stdout.write(text)
  },
  err: (text) => {
    process.stderr.write(text)
  },
  stdin: async () => {
    const pieces: Buffer[] = []
    for await (const piece of process.stdin) pieces.push(piece as Buffer)
    return withoutMark(Buffer.concat(pieces).toString())
  },
  read: async (path) => withoutMark(readFileSync(path, 'utf8')),
  readRecord: (path, within) => readSafely(disk, path, within),
  write: async (path, text) => writeFileSync(path, text),
  makeFolder: async (path) => {
    mkdirSync(path, { recursive: true })
  },
  append: async (path, text) => appendFileSync(path, text),
  standing: async (path) => standing(path),
  list: async (folder) =>
    readdirSync(folder, { withFileTypes: true }).map((entry) => ({
      name: entry.name,
      standing: entry.isDirectory() ? 'folder' : 'file',
    })),
  git: (folder, args) =>
    new Promise((resolve) =>
      execFile('git', ['-C', folder, ...args], { maxBuffer: 1 << 28, env: outsideHook }, (error, out) => {
        if (error && typeof error.code !== 'number') resolve(null)
        else resolve({ code: Number(error?.code ?? 0), out })
      }),
    ),
  processors: availableParallelism(),
  sheets: (cache) => createSheets(join(program, 'sheet-reader.js'), { cache, env }),
  inThread: (share) =>
    new Promise((resolve, reject) => {
      new Worker(file, { workerData: share }).once('message', resolve).once('error', reject)
    }),
  serve: async () => {
    require(join(program, 'server.js'))
    await new Promise(() => {}) // the server ends the process
  },
}

// a reader that has seen enough (`| head`) closes the pipe: the rest is not wanted, and that is no failure
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

if (isMainThread) run()
else parentPort?.postMessage(checkShare(workerData as Share))

function run(): void {
  main(world).then(
    (code) => (process.exitCode = code),
    (error: unknown) => {
      world.err(`wattproof stumbled: ${String(error)}\n`)
      process.exitCode = 2
    },
  )
}

function standing(path: string): Standing {
  try {
    const found = statSync(path, { throwIfNoEntry: false })
    return found ? (found.isDirectory() ? 'folder' : 'file') : null
  } catch (error) {
    return refusal(error, path) && 'file' // it is there, and reading it will say what is wrong
  }
}

/** Editors leave the byte order mark out too, so places agree. */
function withoutMark(text: string): string {
  return text.startsWith('\uFEFF') ? text.slice(1) : text
}
