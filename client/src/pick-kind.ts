import { l10n, window } from 'vscode'

const kinds = () => [
  { label: l10n.t('Panels'), record: 'panel' },
  { label: l10n.t('Controllers'), record: 'controller' },
  { label: l10n.t('Batteries'), record: 'battery' },
  { label: l10n.t('Climates'), record: 'climate' },
  { label: l10n.t('Systems'), record: 'system' },
]

/** Which kind of record a person means. */
export const pickKind = async (title: string): Promise<string | undefined> =>
  (await window.showQuickPick(kinds(), { title }))?.record
