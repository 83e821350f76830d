import { Uri, l10n, window, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { climateRequest, type ClimateParams, type ClimateResult } from '../../server/src/editor/protocol.ts'
import { chosenFolder, openDraft } from './new-record.ts'

/** Asks for a file of hourly weather, or for a latitude to guess by, and opens the climate record. Nothing is written until the person saves. */
export async function newClimateFromWeather(client: BaseLanguageClient, wanted: Uri | undefined): Promise<void> {
  const source = wanted ? await gathered(wanted) : await asked()
  if (!source) return
  const climate = await client.sendRequest<ClimateResult>(climateRequest, source)
  if ('problem' in climate) return void window.showErrorMessage(climate.problem)
  const name = 'name' in source ? source.name.replace(/\.epw$/i, '') : `latitude ${source.latitude}`
  const folder = (await chosenFolder('climate')) ?? undefined
  const file = `${name.toLowerCase().replace(/[^a-z0-9.]+/g, '-')}.climate.yaml`
  await openDraft(folder ? Uri.joinPath(folder, file) : Uri.file(file), climate.text)
}

async function asked(): Promise<ClimateParams | undefined> {
  const title = l10n.t('New climate record')
  const choices = [
    { label: l10n.t('From a file of hourly weather'), description: 'EPW', isFile: true },
    {
      label: l10n.t('Guessed from the latitude'),
      description: l10n.t('an assumption that the record states'),
      isFile: false,
    },
  ]
  const way = await window.showQuickPick(choices, { title })
  if (!way) return undefined
  if (!way.isFile) {
    const prompt = l10n.t('Degrees from -66 to 66, south negative')
    const latitude = await window.showInputBox({ title, prompt, placeHolder: '43.5' })
    return latitude === undefined ? undefined : { latitude }
  }
  const [file] = (await window.showOpenDialog({ title, openLabel: l10n.t('Read'), filters: { EPW: ['epw'] } })) ?? []
  return file && gathered(file)
}

async function gathered(file: Uri) {
  const text = new TextDecoder().decode(await workspace.fs.readFile(file))
  return { name: file.path.slice(file.path.lastIndexOf('/') + 1), text }
}
