/** A picture with its heading. */
export interface Drawn {
  readonly title: string
  readonly svg: string
}

/** Those that could be drawn. */
export const drawn = (...all: readonly (readonly [string, string])[]): readonly Drawn[] =>
  all.filter(([, svg]) => svg !== '').map(([title, svg]) => ({ title, svg }))
