import type { ExtensionContext } from 'vscode'
import { waitForRecord } from './entry.ts'
import type { StartSession } from './session.ts'

export function activate(context: ExtensionContext): void {
  // the name of the bundle, not of the source: see .scripts/build.mjs
  waitForRecord(context, () => (require('./session.js') as { startSession: StartSession }).startSession)
}
