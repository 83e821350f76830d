import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { startServer } from './language-server.mjs'

/**
 * Starts a language server on a folder and opens one of its records.
 *
 * @param later  whether to wait for the findings of all records and then 10 s more
 * @returns      ms until the first findings, until all, and memory then and 10 s later [MB]; what is not waited for is NaN
 */
export async function firstFindings(args, folder, later) {
  const path = join(
    folder,
    readdirSync(folder).find((name) => name.endsWith('.panel.yaml')),
  )
  const uri = pathToFileURL(path).href
  const textDocument = { uri, languageId: 'yaml', version: 1, text: readFileSync(path, 'utf8') }
  const began = performance.now()
  const { connection, pid, findings, stop } = await startServer(args, folder)
  await Promise.all([connection.sendNotification('textDocument/didOpen', { textDocument }), findings(uri)])
  const first = performance.now() - began
  let all = NaN
  if (later) {
    await connection.sendRequest('workspace/diagnostic', { previousResultIds: [] })
    all = performance.now() - began
  }
  const memory = held(pid)
  if (later) await new Promise((done) => setTimeout(done, 10_000))
  const memoryLater = later ? held(pid) : NaN
  stop()
  return { first, all, memory, memoryLater }
}

/** Memory of a process [MB]; Linux alone says so. */
function held(pid) {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))[1]) / 1024
}
