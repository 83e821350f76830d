import { window } from 'vscode'

const kinds = [
  { label: 'Panels', record: 'panel' },
  { label: 'Controllers', record: 'controller' },
  { label: 'Batteries', record: 'battery' },
  { label: 'Climates', record: 'climate' },
  { label: 'Systems', record: 'system' },
] as const

/** Which kind of record a person means. */
export const pickKind = async (title: string): Promise<string | undefined> =>
  (await window.showQuickPick(kinds, { title }))?.record
