import type { Connection } from 'vscode-languageserver'
import type { Client } from './client.ts'
import { settingsSection, type EditorSettings } from './protocol.ts'

const defaults: EditorSettings = { hints: { units: true, derived: true }, codeLens: true }

/** Settings by resource where the client is asked for them, else the last it sent, else the defaults. What is of another kind is named in the log, once. */
export function createSettings(connection: Connection, client: Client) {
  let sent = defaults
  const known = new Map<string, Promise<EditorSettings>>()
  const said = new Set<string>()
  return {
    of(uri: string): Promise<EditorSettings> {
      if (!client.configuration) return Promise.resolve(sent)
      const before = known.get(uri)
      if (before) return before
      const asked = connection.workspace
        .getConfiguration({ scopeUri: uri, section: settingsSection })
        .then(complete, () => defaults)
      known.set(uri, asked)
      return asked
    },
    forget: (uri: string) => known.delete(uri),
    changed(all: unknown) {
      known.clear()
      sent = complete((all as Record<string, unknown> | null)?.[settingsSection])
    },
  }

  function complete(given: unknown): EditorSettings {
    const { hints, codeLens } = group('', given)
    const { units, derived } = group('.hints', hints)
    return {
      hints: { units: isOn('.hints.units', units), derived: isOn('.hints.derived', derived) },
      codeLens: isOn('.codeLens', codeLens),
    }
  }

  function group(name: string, given: unknown): Readonly<Record<string, unknown>> {
    if (typeof given === 'object' && given !== null && !Array.isArray(given)) return given as Record<string, unknown>
    if (given !== undefined && given !== null) wrong(name, given, 'a group of settings is expected')
    return {}
  }

  function isOn(name: string, given: unknown): boolean {
    if (given !== undefined && given !== null && typeof given !== 'boolean')
      wrong(name, given, 'true or false is expected, and true is used')
    return given !== false
  }

  function wrong(name: string, given: unknown, expected: string) {
    const problem = `The setting ${settingsSection}${name} is ${JSON.stringify(given)}: ${expected}.`
    if (!said.has(problem)) connection.console.warn(problem)
    said.add(problem)
  }
}
