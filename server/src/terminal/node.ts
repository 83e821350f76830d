import { execFile } from 'node:child_process'
import { realpathSync } from 'node:fs'
import { appendFile, mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { checkShare } from './check-all.ts'
import { main } from './main.ts'
import type { Share } from './share.ts'
import type { Standing, World } from './world.ts'

const { argv, env, stdin, stdout, stderr } = process
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

const world: World = {
  args: argv.slice(2),
  cwd: process.cwd(),
  env,
  home: dirname(program),
  today: [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-'),
  colour,
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  stdin: async () => {
    const pieces: Buffer[] = []
    for await (const piece of stdin) pieces.push(piece as Buffer)
    return withoutMark(Buffer.concat(pieces).toString())
  },
  read: async (path) => withoutMark(await readFile(path, 'utf8')),
  write: (path, text) => writeFile(path, text),
  makeFolder: async (path) => void (await mkdir(path, { recursive: true })),
  append: (path, text) => appendFile(path, text),
  standing,
  list: async (folder) =>
    Promise.all(
      (await readdir(folder, { withFileTypes: true })).map(async (entry) => ({
        name: entry.name,
        standing: entry.isFile() ? 'file' : entry.isDirectory() ? 'folder' : await linkedFile(join(folder, entry.name)),
      })),
    ),
  git: (folder, args) =>
    new Promise((resolve) =>
      execFile('git', ['-C', folder, ...args], { maxBuffer: 1 << 28, env: outsideHook }, (error, out) => {
        if (error && typeof error.code !== 'number') resolve(null)
        else resolve({ code: Number(error?.code ?? 0), out })
      }),
    ),
  processors: availableParallelism(),
  inThread: (share) =>
    new Promise((resolve, reject) => {
      new Worker(file, { workerData: share }).once('message', resolve).once('error', reject)
    }),
  serve: async () => {
    await import(pathToFileURL(join(program, 'server.js')).href)
    await new Promise(() => {}) // the server ends the process
  },
}

// a reader that has seen enough (`| head`) closes the pipe: the rest is not wanted, and that is no failure
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

if (isMainThread) void main(world).then((code) => (process.exitCode = code))
else parentPort?.postMessage(checkShare(workerData as Share))

async function standing(path: string): Promise<Standing> {
  const found = await stat(path).catch(() => null)
  return found ? (found.isDirectory() ? 'folder' : 'file') : null
}

/** A linked folder is not entered, so that a walk ends. */
async function linkedFile(path: string): Promise<Standing> {
  return (await standing(path)) === 'file' ? 'file' : null
}

/** Editors leave the byte order mark out too, so places agree. */
function withoutMark(text: string): string {
  return text.startsWith('\uFEFF') ? text.slice(1) : text
}
