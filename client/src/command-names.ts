/** Every command of the palette, without the `wattproof.` before it. */
export const commandNames = [
  'newPanelRecord',
  'newControllerRecord',
  'newBatteryRecord',
  'newClimateRecord',
  'newSystem',
  'newLibrary',
  'newPanelFromSheet',
  'newRecordsFromTable',
  'newClimateFromWeather',
  'openPracticeRecord',
  'showBeside',
  'showSheet',
  'comparePanels',
  'showTable',
  'showRule',
  'saveTable',
  'savePage',
  'saveForm',
  'reviewSystem',
  'putPanel',
  'showChanges',
  'fixAll',
] as const

type CommandName = (typeof commandNames)[number]

/** What each command does, with what a menu or a keybinding hands it. */
export type Run = Readonly<Record<CommandName, (argument: unknown) => unknown>>
