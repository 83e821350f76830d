import { extensions, languages, workspace } from 'vscode'
import { broken, good, slip } from './records.ts'
import { bytes, hasRule, hintsOf, holds, inFolder, ours, ruleOf, same, showNew, soon } from './tools.ts'

/** Another extension, where one is installed beside ours, reports plain YAML syntax; then we do not. */
export async function yamlSyntaxIsReportedOnce() {
  const document = await showNew('broken.panel.yaml', broken)
  const elsewhere = extensions.getExtension('redhat.vscode-yaml') !== undefined
  if (elsewhere) {
    await soon(
      'the finding of the other',
      () => languages.getDiagnostics(document.uri),
      (found) => found.some(({ source }) => source === 'yaml'),
    )
    const slipped = await showNew('other.panel.yaml', slip)
    await soon('ours in another record', () => ours(slipped.uri), hasRule('voc-below-vmp'))
    same(
      ours(document.uri)
        .filter((finding) => ruleOf(finding) === 'yaml-syntax')
        .map(({ message }) => message),
      [],
    )
  } else
    await soon(
      'a finding of ours',
      () => ours(document.uri),
      (found) => found.some(({ severity }) => severity === 0),
    )
}

/** Our files keep other extensions from guessing a schema by the folder that a file lies in. */
export async function noSchemaIsGuessedForRecords() {
  const set = workspace.getConfiguration('yaml').inspect<string[]>('disableSchemaDetection')
  holds(
    set?.defaultValue?.some((glob) => glob.includes('panel')),
    JSON.stringify(set),
  )
}

export async function otherYamlIsLeftAlone() {
  const document = await showNew('plain.yaml', slip)
  const record = await showNew('record.panel.yaml', slip)
  await soon('findings in the record', () => ours(record.uri), hasRule('voc-below-vmp'))
  same(ours(document.uri), [])
}

/** What source control shows beside a file is history, and nobody can fix it. */
export async function olderVersionsAreLeftAlone() {
  const provider = workspace.registerTextDocumentContentProvider('old-version', {
    provideTextDocumentContent: () => slip,
  })
  const old = await workspace.openTextDocument(inFolder('slip.panel.yaml').with({ scheme: 'old-version' }))
  const record = await showNew('newer.panel.yaml', slip)
  await soon('findings in the record', () => ours(record.uri), hasRule('voc-below-vmp'))
  same(ours(old.uri), [])
  provider.dispose()
}

/** A file that lies outside the folder of the window is under the settings above it, as on the command line. */
export async function aFileFromElsewhereIsUnderItsOwnSettings() {
  await workspace.fs.writeFile(inFolder('../elsewhere/wattproof.yaml'), bytes('format: 1\nsite: { coldest: -40 °C }\n'))
  const text = `${good}temperature_coefficients: { voc: -0.29 %/°C }\n`
  const document = await showNew('../elsewhere/panels/far.panel.yaml', text)
  await soon(
    'the voltage on the coldest morning there',
    () => hintsOf(document),
    (hints) => hints.includes('cold 26.3 V'),
  )
}
