import { afterEach, describe, expect, test, vi } from 'vitest'
import { createWorkspace } from '../../server/src/editor/workspace.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import { reportFile } from '../../server/src/terminal/file-report.ts'
import { hazards } from '../../server/src/text/hazards/index.ts'
import { check, today } from './checked.ts'

const rules = (path: string, text: string) => check(text, { path }).findings.map(({ rule }) => rule)

test.each([
  { path: 'a.panel.yaml', text: 'certificates: [1.,6 A]\n' },
  { path: 'a.panel.yaml', text: '#accept\rp' },
  { path: 'a.climate.yaml', text: 'air:\n  coldest: 1 °C\nair:\n  mean_low: [1, 2, 3, 4, "5,5 °C"]\n' },
])('$text is checked', ({ path, text }) => {
  expect(rules(path, text)).not.toContain('internal-error')
})

describe('a mistake of our own in one file', () => {
  const odd = 'format: 1\nname: secret\nstc: { voc: 22,1 V }\n'
  const sound = 'format: 1\nstc:\n  voc: 22.1 V\n  vmp: 25 V\n'
  const fail = () => {
    throw new TypeError('cannot read "secret"')
  }
  afterEach(() => vi.restoreAllMocks())

  test.each([
    {
      where: 'reading',
      breakIt: () => {
        const { find } = hazards[0]!
        vi.spyOn(hazards[0]!, 'find').mockImplementation((tree) => (tree.text === odd ? fail() : find(tree)))
      },
      also: [],
    },
    {
      where: 'the rules',
      breakIt: () => {
        const { check } = panelRules[0]
        vi.spyOn(panelRules[0], 'check').mockImplementation((record, about) =>
          record.name ? fail() : check(record, about),
        )
      },
      also: ['decimal-comma-splits'],
    },
  ])(
    'of $where: one finding there in both adapters, none of its contents, and the others as ever',
    ({ breakIt, also }) => {
      const both = () => {
        const library = createLibrary()
        const workspace = createWorkspace(() => today)
        for (const put of [library.put, workspace.put]) {
          put('/odd.panel.yaml', odd)
          put('/sound.panel.yaml', sound)
        }
        return ['/odd.panel.yaml', '/sound.panel.yaml'].map((path) => {
          const { findings } = reportFile(library, path, '/', { today })!
          expect(workspace.check(path)!.findings).toEqual(findings)
          return findings
        })
      }
      const [, before] = both()
      breakIt()
      const [here, there] = both()
      expect(there).toEqual(before)
      const [first, ...others] = here!
      expect(first).toMatchObject({ rule: 'internal-error', severity: 'error', span: { start: 0, end: 0 } })
      expect(first?.message).toMatch(/\(TypeError\).* please report it/)
      expect(first?.message).not.toContain('secret')
      expect(others.map(({ rule }) => rule)).toEqual(expect.arrayContaining(also))
    },
  )
})
