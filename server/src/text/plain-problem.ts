import type { SyntaxProblem } from './tree.ts'

/** One of YAML's own complaints, on the characters that it is about. */
export function plainProblem(text: string, error: { code: string; message: string; pos: readonly [number, number] }): SyntaxProblem {
  const start = Math.min(error.pos[0], text.length)
  const end = Math.min(Math.max(error.pos[1], start + 1), text.length)
  return { code: error.code, message: error.message, span: { start: start === end ? Math.max(0, end - 1) : start, end } }
}
