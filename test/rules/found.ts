import { checkFile } from '../../server/src/check/check.ts'
import { toFinding } from '../../server/src/check/in-words.ts'
import { applyRules } from '../../server/src/check/apply-rules.ts'
import type { Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { Library } from '../../server/src/library/library.ts'
import type { FamilyAbout, PanelAbout } from '../../server/src/rules/about.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import type { Panel } from '../../server/src/records/records.generated.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { siteOf } from '../../server/src/values/site.ts'
import type { Bundle } from '../../server/src/wording/bundle.ts'
import { marked, type Mark } from '../markers.ts'
import { examples, filesOf, type Example } from './fixtures.ts'

const today = '2026-11-25'

/** What its rule finds in an example, which is given without its marks. */
export function foundIn(example: Example, bundle?: Bundle) {
  const { rule } = example
  const [first, ...others] = filesOf(example)
  const { path, text } = first!
  const { source, marks } = marked(text)
  const library = createLibrary()
  library.put(path, source)
  for (const other of others) library.put(other.path, other.text)
  const file = library.file(path)!
  const isOfPanels = panelRules.some(({ id }) => id === rule)
  const all =
    isOfPanels && file.kind === 'panel'
      ? alone(library, file as ReadFile<'panel'>, bundle)
      : checkFile(library, path, { today, bundle })!.findings
  return { source, marks, found: all.filter((one) => one.rule === rule) }
}

/** The rules of a panel by themselves: in a whole check one mistake is reported once, by the strongest of them. */
function alone(library: Library, file: ReadFile<'panel'>, bundle: Bundle | undefined): readonly Finding[] {
  const others = library.ofKind('panel', file.path).filter(({ path }) => path !== file.path)
  const found = applyRules<Panel, PanelAbout & FamilyAbout>(panelRules, file, {
    settings: undefined,
    site: siteOf(undefined),
    today,
    typed: (pointer) => file.fields.has(pointer),
    siblings: others,
    kin: others,
  })
  return found.map((one) => toFinding(one, file.kind, bundle))
}

/** Every message that an example is marked with, as a bundle has it: by the text of the mark, which may be a part of the message. */
export const marksIn = (bundle: Bundle): readonly (readonly [string, string])[] =>
  examples.flatMap((example) => {
    const { marks, found } = foundIn(example, bundle)
    return marks.map(({ text }: Mark, i) => [text, found[i]!.message] as const)
  })
