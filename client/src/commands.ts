import { Uri, commands, type ExtensionContext } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import type { Beside } from './beside.ts'
import type { Run } from './command-names.ts'
import { newClimateFromWeather } from './new-climate.ts'
import { newFromSheet } from './new-from-sheet.ts'
import { newLibrary } from './new-library.ts'
import { newRecord } from './new-record.ts'
import { newRecordsFromTable } from './new-from-table.ts'
import { openPracticeRecord } from './practice.ts'
import { putPanel } from './put-panel.ts'
import { reviewSystem } from './review-system.ts'
import { showRule } from './rule-page.ts'
import { savePage } from './save-page.ts'
import { showChanges } from './show-changes.ts'
import { comparePanels, saveTable, showTable } from './tables.ts'

/** What each command does. An argument is what a menu hands over: a file or a folder. */
export function commandsOf(context: ExtensionContext, client: BaseLanguageClient, beside: Beside): Run {
  const begin = (kind: string) => (folder: unknown) => newRecord(client, kind, uri(folder))
  return {
    newPanelRecord: begin('panel'),
    newControllerRecord: begin('controller'),
    newBatteryRecord: begin('battery'),
    newClimateRecord: begin('climate'),
    newSystem: begin('system'),
    newLibrary: (folder) => newLibrary(client, uri(folder)),
    newPanelFromSheet: (file) => newFromSheet(client, uri(file)),
    newRecordsFromTable: (file) => newRecordsFromTable(client, uri(file)),
    newClimateFromWeather: (file) => newClimateFromWeather(client, uri(file)),
    openPracticeRecord: () => openPracticeRecord(context),
    showBeside: (file) => beside.show('pictures', uri(file)),
    showSheet: (file) => beside.show('sheet', uri(file)),
    comparePanels: () => comparePanels(client),
    showTable: () => showTable(client),
    showRule: (rule) => showRule(client, context, rule),
    saveTable: () => saveTable(client),
    savePage: (system) => savePage(client, 'page', uri(system)),
    saveForm: (system) => savePage(client, 'form', uri(system)),
    reviewSystem: (system) => reviewSystem(() => beside.show('pictures'), uri(system)),
    putPanel: (system) => putPanel(client, uri(system)),
    showChanges: () => showChanges(client),
    fixAll: () =>
      commands.executeCommand('editor.action.codeAction', { kind: 'source.fixAll.wattproof', apply: 'first' }),
  }
}

const uri = (argument: unknown): Uri | undefined => (argument instanceof Uri ? argument : undefined)
