import { lineEnding } from './edit-entries.ts'
import type { Line, Surroundings } from './line.ts'
import type { Shape } from './shape.ts'

/** The lines of a text, from where they start. */
export const linesOf = (text: string, starts: readonly number[]): Line[] =>
  starts.map((start, i): Line => {
    const line = text.slice(start, starts[i + 1] ?? text.length).replace(/[\r\n]{1,2}$/, '')
    const indent = /^ */.exec(line)![0].length
    return { start, text: line, indent, column: indent + /^(?:- +)*/.exec(line.slice(indent))![0].length }
  })

/** Whether it holds more than a comment. */
export const isFull = ({ text }: Line) => /^ *[^\s#]/.test(text)

const nothing: ReadonlySet<string> = new Set()

/** @param at  of the line, among those that are full */
export function surroundings(text: string, full: readonly Line[], at: number, shape: Shape | undefined): Surroundings {
  const outer: number[] = []
  let margin = full[at]!.column
  for (let above = at; 0 <= above && margin > 0; above--) {
    const { indent } = full[above]!
    if (indent < margin) outer.push(indent)
    margin = Math.min(margin, indent)
  }
  const { names, prose } = shape ?? { names: nothing, prose: nothing }
  return { above: full[at - 1], next: full[at + 1], outer, eol: lineEnding(text), names, prose }
}
