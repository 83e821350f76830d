import type { Connection } from 'vscode-languageserver'
import type { Client } from './client.ts'
import { settingsSection, type EditorSettings } from './protocol.ts'

const defaults: EditorSettings = { hints: { units: true, derived: true }, codeLens: true }

/** Settings by resource where the client is asked for them, else the last it sent, else the defaults. */
export function createSettings(connection: Connection, client: Client) {
  let sent = defaults
  const known = new Map<string, Promise<EditorSettings>>()
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
}

function complete(given: unknown): EditorSettings {
  const { hints, codeLens } = (given ?? {}) as { hints?: Partial<EditorSettings['hints']> | null; codeLens?: unknown }
  return {
    hints: { units: isOn(hints?.units), derived: isOn(hints?.derived) },
    codeLens: isOn(codeLens),
  }
}

const isOn = (setting: unknown) => setting !== false
