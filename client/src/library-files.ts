import { FileType, RelativePattern, Uri, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import {
  bytesRequest,
  filesRequest,
  readRequest,
  type BytesParams,
  type BytesResult,
  type FilesParams,
  type FilesResult,
  type ReadParams,
  type ReadResult,
} from '../../server/src/editor/protocol.ts'
import { skippedGlob } from './records.ts'

/** What the server reads of a disk itself; where it cannot, nothing else keeps a gigabyte from being decoded and sent. */
const mostBytes = 1024 * 1024

/**
 * Answers the server's questions for the records of this window. The server asks the editor and not the disk, so that it
 * works the same on this machine, on a remote one and in a browser.
 */
export function answerFiles(client: BaseLanguageClient): void {
  client.onRequest(filesRequest, async ({ globs, folder }: FilesParams): Promise<FilesResult> => {
    const within = (glob: string) => (folder === undefined ? glob : new RelativePattern(Uri.parse(folder), glob))
    const found = await Promise.all(globs.map((glob) => workspace.findFiles(within(glob), skippedGlob)))
    return found.flat().map(String)
  })
  client.onRequest(readRequest, async ({ uri }: ReadParams): Promise<ReadResult> => {
    const file = Uri.parse(uri)
    try {
      const { type, size } = await workspace.fs.stat(file)
      if ((type & FileType.File) === 0) return { because: { template: 'it is no regular file', values: [] } }
      if (size > mostBytes)
        return {
          because: {
            template: 'it has {0} MiB, and a record has a few KiB',
            values: [(size / mostBytes).toFixed(1)],
          },
        }
      return new TextDecoder().decode(await workspace.fs.readFile(file))
    } catch {
      return null // gone since it was listed
    }
  })
  client.onRequest(bytesRequest, async ({ uri, most }: BytesParams): Promise<BytesResult> => {
    const file = Uri.parse(uri)
    try {
      const { type, size } = await workspace.fs.stat(file)
      if ((type & FileType.File) === 0) return null
      return size > most ? { size } : await workspace.fs.readFile(file)
    } catch {
      return null
    }
  })
}
