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
  'showTable',
  'showRule',
  'saveTable',
  'savePage',
  'saveForm',
  'reviewSystem',
  'fixAll',
] as const

export type CommandName = (typeof commandNames)[number]
