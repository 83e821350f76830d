import {
  accessSync,
  appendFileSync,
  constants,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  statSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { createSupportsHyperlinks } from 'supports-hyperlinks'
import { setFlagsFromString } from 'node:v8'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { knownToGit } from './git/known.ts'
import { runGit } from './git/run.ts'
import { createSheets } from '../reader/kept.ts'
import { readSafely, refusal, type Disk } from '../library/read-safely.ts'
import { dayOf } from '../records/dates.ts'
import { hashes } from './hashes.ts'
import { slashed } from './paths.ts'
import { writeAside } from './write-aside.ts'
import type { Texts as Words } from '../wording/bundle.ts'
import { checkShare } from './check-all.ts'
import type { FileReport } from './file-report.ts'
import { openPack } from './kept/pack.ts'
import { createProgress } from './progress.ts'
import { main } from './main.ts'
import type { Share } from './share.ts'
import { phraseInWords } from '../wording/phrase.ts'
import { whyNotWritten } from './why-not.ts'
import type { Pictures, Standing, World } from './world.ts'

const { argv, env, stderr, stdout } = process
const file = realpathSync(argv[1] as string)
const program = dirname(file)

/** Escapes only for a terminal that wants them; FORCE_COLOR is for continuous integration that shows colours. */
const colour = !env.NO_COLOR && ((env.FORCE_COLOR ?? '0') !== '0' || (stdout.isTTY && env.TERM !== 'dumb'))

const width = stdout.columns || Number(env.COLUMNS) || 0

const disk: Disk = {
  real: (path) => realpathSync.native(path).replaceAll('\\', '/'),
  about: (path) => statSync(path),
  isLink: (path) => lstatSync(path).isSymbolicLink(),
  read: (path) => withoutMark(readFileSync(path, 'utf8')),
}

const line = stderr.isTTY
  ? createProgress(
      (text) => stderr.write(text),
      () => performance.now(),
    )
  : null

/** Files are read and written without waiting in between: a process that does nothing else meanwhile is the faster for it. */
const world: World = {
  args: argv.slice(2),
  cwd: process.cwd(),
  env,
  home: dirname(program),
  today: dayOf(new Date()),
  colour,
  links: colour && stdout.isTTY && createSupportsHyperlinks(stdout),
  words: (language) =>
    language === 'en' ? undefined : (require(join(program, 'languages', `${language}.js`)) as Words),
  width: width || 100,
  hasWidth: width > 0,
  out: (text) => {
    if (stdout.isTTY) line?.hide()
    stdout.write(text)
  },
  err: (text) => {
    stderr.write(text)
  },
  progress: line?.show ?? (() => {}),
  // what is young has 2 MB by now; 16 MB, which it would grow to, save an eighth of the time
  saveMemory: () => setFlagsFromString('--semi-space-growth-factor=1'),
  stdin: async () => {
    const pieces: Buffer[] = []
    for await (const piece of process.stdin) pieces.push(piece as Buffer)
    return withoutMark(Buffer.concat(pieces).toString())
  },
  read: async (path) => withoutMark(readFileSync(path, 'utf8')),
  readRecord: (path, within) => readSafely(disk, path, within),
  write: async (path, text) => writeAside(path, text),
  rewrite: async (path, text) => {
    // another file takes its place, whose folder alone would have to be writable
    accessSync(path, constants.W_OK)
    const before = readFileSync(path, 'utf8')
    writeAside(path, withoutMark(before) === before ? text : `\uFEFF${text}`)
  },
  followed: async (path) => slashed(realpathSync(path)),
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
  git: runGit(process.cwd(), env),
  known: (folder) => knownToGit(world, folder),
  hashes: async (path, algorithm) => hashes(path, algorithm),
  sheets: (cache) => createSheets(join(program, 'sheet-reader.js'), { cache, env }),
  pack: () => openPack([join(program, 'terminal.js'), join(program, 'sheet-reader.js')], process.cwd(), env),
  inThread: (share, take) =>
    new Promise((resolve, reject) => {
      const worker = new Worker(file, { workerData: share })
      worker.on('message', (reports: FromThread) => (reports === 'end' ? resolve() : take(reports)))
      worker.once('error', reject)
    }),
  pictures: () => require(join(program, 'pictures.js')) as Pictures,
  serve: async () => {
    require(join(program, 'server.js'))
    await new Promise(() => {}) // the server ends the process
  },
}

/** How many reports are handed over at once. */
const portion = 8

// a reader that has seen enough (`| head`) closes the pipe: the rest is not wanted, and that is no failure
let lost = false
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE' || lost) return
  lost = true
  process.exitCode = 2
  world.err(`wattproof: the output cannot be written: ${phraseInWords(whyNotWritten(error))}\n`)
})

if (isMainThread) run()
else shareOfWork().catch(asErrorOfThread)

type FromThread = readonly FileReport[] | 'end'

/** The thread ends with it, and whoever started it hears of it. */
function asErrorOfThread(error: unknown): void {
  queueMicrotask(() => {
    throw error as Error
  })
}

async function shareOfWork(): Promise<void> {
  const say = (message: FromThread) => parentPort?.postMessage(message)
  let reports: FileReport[] = []
  await checkShare(workerData as Share, world, (report) => {
    if (reports.push(report) < portion) return
    say(reports)
    reports = []
  })
  say(reports)
  say('end')
}

function run(): void {
  main(world).then(
    (code) => (process.exitCode = lost ? 2 : code),
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
