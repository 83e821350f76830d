import { afterAll, beforeAll, describe, test } from 'vitest'
import { pageOf } from './driver/editor-server.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { windowIn } from './driver/window.ts'

// somebody else's folder: nothing in it is run, so all of it can be proofread before anybody trusts it
describe.skipIf(missing)(missing ?? 'a folder that nobody trusts', () => {
  let here: Visit
  beforeAll(async () => void (here = await visit([vsix], { restricted: true })))
  afterAll(() => here?.close())

  test('its records are proofread all the same', async () => {
    const window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
    await here.page.getByText('Restricted Mode').first().waitFor()
    const editor = await window.open('decimal-point-moved.panel.yaml')
    await window.squiggle(editor, 'error').waitFor()
    await here.picture('restricted')
  })
})
