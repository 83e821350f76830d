export interface Case {
  readonly text: string
  /** The characters that the finding stands on. */
  readonly on: string
  readonly says: string
  /** The whole text after each fix; `same` first where a fix keeps what was meant. */
  readonly fixed?: readonly (readonly ['same' | 'guess', string])[]
  readonly spoils?: readonly string[]
  readonly swallows?: readonly string[]
}
