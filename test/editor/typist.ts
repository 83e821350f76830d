import type { Client } from './client.ts'

/** Types into an open, empty document, one key at a time, and looks at what is found after each. */
export async function typist(client: Client, uri: string) {
  let version = 1
  let [line, character] = [0, 0]
  const typed = {
    text: '',
    async key(text: string) {
      const at = { line, character }
      await client.change(uri, ++version, [{ range: { start: at, end: at }, text }])
      typed.text += text
      if (text === '\n') [line, character] = [line + 1, 0]
      else character += text.length
      return { line, found: await client.pull(uri) }
    },
  }
  return typed
}
