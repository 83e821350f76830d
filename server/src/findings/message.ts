import type { Figure } from '../wording/figure.ts'
import type { Phrase } from '../wording/phrase.ts'

export type { Figure }

/** Templates by name: `{ below: 'Voc {voc} is below Vmp {vmp}' }`. They stay in the file of the rule that says them. */
export type Messages = Readonly<Record<string, string>>

/** Where a template is looked up: a rule, or phrases that several rules share. */
export interface Catalogue<M extends Messages = Messages> {
  readonly id: string
  readonly messages: M
}

/** A sentence, or a part of one, that is not yet in words: a template by its name and what goes into its placeholders. */
export interface Said {
  readonly say: string
  readonly with?: Readonly<Record<string, Param>>
  /** Whose template it is, where that is not the rule's own. */
  readonly of?: Catalogue
}

/** What a placeholder takes. Nothing is put for null. */
export type Param = string | number | Typed | Figure | List | Said | Phrase | null | undefined

/** A field, which is quoted as it was typed. */
export interface Typed {
  readonly text: string
}

export interface List {
  readonly list: readonly Param[]
  /** Before the last; commas alone where it is not given. */
  readonly last?: 'and' | 'or'
}

/** A number that was computed: three digits. */
export const figure = (value: number, unit?: string, digits = 3): Figure => ({ value, digits, ...(unit && { unit }) })

/** A number rounded to whole ones. */
export const whole = (value: number, unit?: string): Figure => ({ value, decimals: 0, ...(unit && { unit }) })

/** What a calculation of a whole system gives, of loads and weather that nobody knows to a hundredth: two digits. */
export const estimate = (value: number, unit?: string): Figure => figure(value, unit, 2)

/** A temperature, as it is typed or assumed. */
export const celsius = (value: number): Figure => ({ value, unit: '°C' })

/** A share as people read it: 17.1 %. */
export const percent = (share: number): Figure => figure(100 * share, '%')

type NamesIn<T extends string> = T extends `${string}{${infer Name}}${infer Rest}` ? Name | NamesIn<Rest> : never

/** What may be said with templates: each by its name and with just its placeholders. */
export type Sayable<M extends Messages> = {
  readonly [K in keyof M & string]: string extends M[K]
    ? Said
    : [NamesIn<M[K]>] extends [never]
      ? { readonly say: K; readonly with?: undefined; readonly of?: Catalogue }
      : { readonly say: K; readonly with: { readonly [N in NamesIn<M[K]>]: Param }; readonly of?: Catalogue }
}[keyof M & string]

/** A way to say shared phrases from anywhere. */
export const sayFrom =
  <const M extends Messages>(phrases: Catalogue<M>) =>
  (phrase: Sayable<M>): Said => ({ ...phrase, of: phrases })
