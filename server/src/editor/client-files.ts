import type { Connection } from 'vscode-languageserver'
import { withoutMark, type Files } from './files.ts'
import { filesRequest, readRequest, recordGlobs, type FilesResult, type ReadResult } from './protocol.ts'

/** Files as the client sees them: remote folders, virtual ones, a browser's. */
export const clientFiles = (connection: Connection, own: Files | null): Files => ({
  list: () => connection.sendRequest<FilesResult>(filesRequest, { globs: recordGlobs }),
  listIn: (folder, deep) => {
    const globs = deep ? recordGlobs : recordGlobs.map((glob) => glob.replace('**/', ''))
    return connection.sendRequest<FilesResult>(filesRequest, { globs, folder })
  },
  read: async (uri, within) => {
    const here = (await own?.read(uri, within)) ?? null // the client cannot find out where a link leads
    if (here !== null) return here
    const text = await connection.sendRequest<ReadResult>(readRequest, { uri })
    return typeof text === 'string' ? withoutMark(text) : text
  },
})
