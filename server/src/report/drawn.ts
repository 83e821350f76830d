/** A picture with its heading. */
export interface Drawn {
  readonly title: string
  readonly svg: string
}

/** A picture that is to be drawn from `data` and from nothing else. */
export interface Plan {
  readonly title: string
  readonly data: unknown
  readonly draw: () => string
}

/** What was drawn last under each title, and from what: while somebody types most pictures stay as they are. */
export type Memory = Map<string, { readonly data: string; readonly svg: string }>

/** Those that could be drawn; one whose data are the same as last time is not drawn again. */
export function drawAll(plans: readonly Plan[], memory: Memory): readonly Drawn[] {
  return plans
    .map(({ title, data, draw }) => {
      const written = JSON.stringify(data)
      const before = memory.get(title)
      const svg = before?.data === written ? before.svg : draw()
      memory.set(title, { data: written, svg })
      return { title, svg }
    })
    .filter(({ svg }) => svg !== '')
}

/** Those that could be drawn. */
export const drawn = (...all: readonly (readonly [string, string])[]): readonly Drawn[] =>
  all.filter(([, svg]) => svg !== '').map(([title, svg]) => ({ title, svg }))
