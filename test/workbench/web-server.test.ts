import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { slip } from './cases/records.ts'
import { startBrowser, type Browser } from './driver/browser.ts'
import { missing } from './driver/visit.ts'

interface Message {
  readonly id?: number
  readonly method?: string
  readonly result?: { readonly capabilities: Record<string, unknown> }
  readonly params?: { readonly diagnostics: readonly { readonly code: string; readonly range: unknown }[] }
}

// the program of editors that run in a browser, in a worker that may not make code from text
describe.skipIf(missing)(missing ?? 'the language server in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await startBrowser()
    await browser.page.route('http://localhost/**', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({
            contentType: 'text/javascript',
            body: readFileSync('dist/web/server.js', 'utf8'),
            headers: policy,
          })
        : route.fulfill({ contentType: 'text/html', body: '<title>empty</title>', headers: policy }),
    )
    await browser.page.goto('http://localhost/')
  })
  afterAll(() => browser?.close())

  test('it answers, and finds the slip in what it is given', async () => {
    const uri = 'vscode-vfs://example/tern-110.panel.yaml'
    const received = await browser.page.evaluate(talk, [
      { id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } },
      { method: 'initialized', params: {} },
      { method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'yaml', version: 1, text: slip } } },
    ])
    expect(received.find(({ id }) => id === 1)?.result?.capabilities).toMatchObject({ hoverProvider: true })
    const { diagnostics } = received.find(({ method }) => method === 'textDocument/publishDiagnostics')?.params ?? {}
    expect(diagnostics).toContainEqual(
      expect.objectContaining({
        code: 'voc-below-vmp',
        range: { start: { line: 8, character: 7 }, end: { line: 8, character: 13 } },
      }),
    )
    expect(browser.outside).toEqual([])
  })
})

const policy = { 'content-security-policy': "default-src 'self'" }

/** Runs in the page: says these things to the server, one answer to `initialize` before the rest, and returns what it says. */
function talk(messages: readonly object[]): Promise<Message[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker('server.js')
    const received: Message[] = []
    const say = (message: object) => worker.postMessage({ jsonrpc: '2.0', ...message })
    worker.onerror = ({ message }) => reject(new Error(message))
    worker.onmessage = ({ data }: MessageEvent<Message>) => {
      received.push(data)
      if (data.id === 1 && data.result) messages.slice(1).forEach(say)
      if (data.method === 'textDocument/publishDiagnostics') resolve(received)
    }
    messages.slice(0, 1).forEach(say)
  })
}
