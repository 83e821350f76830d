import { plain } from '../quantities/plain.ts'

/** How a sheet writes the decimal sign. */
export type Decimal = '.' | ','

/** A printed number with what stands around it. */
export interface Printed {
  /** With a decimal point and its sign, as it is typed: `-0.38`. */
  readonly number: string
  readonly value: number
  /** The unit's symbol as a record has it; null where none is printed. */
  readonly unit: string | null
  /** How it is tied to the number before: a range, a side of a size, a spread, or nothing. */
  readonly join: 'range' | 'by' | 'spread' | 'slash' | null
  readonly signed: '+' | '-' | ''
  readonly start: number
  readonly end: number
}

/** Plain characters: one kind of minus, of blank, of times. Marks of footnotes are gone already. */
export const plainly = (text: string): string =>
  plain(
    text
      .replace(/℃/g, '°C')
      .replace(/[✕✖⨯∗]/g, 'x')
      .replace(/[˜∼]/g, '~'),
  )
    .text.replace(/º/g, '°')
    .replace(/…/g, '...')

const unitForms: readonly (readonly [RegExp, string])[] = [
  [/(%|mV|V|mA|A|mW|W)\s*(?:\/|per|pro|por|par)\s*(?:°\s?C|deg\.? ?C|C\b|°)/y, '$1/°C'],
  [/(%|mV|V|mA|A|mW|W)\s*(?:\/|per|pro|por|par)\s*(?:°?K|Kelvin|kelvin)/y, '$1/K'],
  [/(%|mV|V|mA|A|mW|W)\s*(?:[·.]\s*)?(?:°?K|°C)\s*\^?-1/y, '$1/K'],
  [/(%|mV)\s*(?:\/|per)\s*°?F/y, '$1/°F'],
  [/(?:ppm)\s*\/\s*(?:°C|K)/y, 'ppm/K'],
  // a font without the sign for degrees Celsius leaves nothing
  [/%\s?\/(?=\s*$)/y, '%/K'],
  [/W\s*\/\s*(?:m|kg|ft|W)[²2]?/y, 'other'],
  [
    /(?:kWh|Wh|kPa|Pa|N\/m2|psf|Nm|Ah|dB|Hz|km\/h|m\/s|m2|cm2|mm2|qmm|sq\.? ?mm|AWG|sqm|m³|ft2|g\/m2|kg\/m2|lb\/ft2)/y,
    'other',
  ],
  [/(?:watts?|Watts?|Wp|Wc|Wpeak|W(?=[-\s,;)/+±]|$)|W)(?:[- ]?(?:peak|p))?/y, 'W'],
  [/kWp?/y, 'kW'],
  [/mV/y, 'mV'],
  [/(?:[vV]olts?(?:\s?[dD]\.?[cC]\.?)?|Vcc|V(?:\s?[dD]\.?[cC]\.?)?)/y, 'V'],
  [/mA/y, 'mA'],
  [/(?:A(?:\s?[dD]\.?[cC]\.?)?(?![a-z])|amps?|Amps?|amperes?|Ampere)/y, 'A'],
  [/mm/y, 'mm'],
  [/cm/y, 'cm'],
  [/(?:inches|inch|in\.?(?! ?(?!x\b)\p{L})|"|'')/uy, 'in'],
  [/(?:ft|feet|')/y, 'ft'],
  [/m/y, 'm'],
  [/kgs?/y, 'kg'],
  [/(?:lbs?\.?|pounds?)/y, 'lb'],
  [/oz/y, 'oz'],
  [/g/y, 'g'],
  [/%/y, '%'],
  [/(?:°\s?C|deg\.? ?C|C)/y, '°C'],
  [/(?:°\s?F)/y, '°F'],
  [/K/y, 'K'],
  [/(?:°|deg\.?|degrees?|Grad|grados|degrés|gradi|graden)/y, 'deg'],
  [/(?:years?|yrs?|yr\.|Jahren?|años?|ans|années?|jaar|jaren|anni)/y, 'years'],
]

/** The unit at a place of a plain text, with its end. */
function unitAt(text: string, at: number): { symbol: string; end: number } | null {
  const gap = /\s*[)\]]?\s*[[(]?\s*/y
  gap.lastIndex = at
  const skip = gap.exec(text)?.[0] ?? ''
  const opened = /[[(]\s*$/.test(skip)
  const from = at + skip.length
  for (const [form, symbol] of unitForms) {
    form.lastIndex = from
    const match = form.exec(text)
    if (!match) continue
    const end = from + match[0].length
    if (/[\p{L}]$/u.test(match[0]) && /^(?!x ?\d)\p{L}/u.test(text.slice(end))) continue
    if (opened && !/^\s*[)\]]/.test(text.slice(end))) return null
    return { symbol: symbol.replace('$1', match[1] ?? ''), end }
  }
  return null
}

/** The unit that a text is, alone or in brackets: `V`, `[mm]`, `(%/°C)`, `in W`. */
export function unitAlone(text: string): string | null {
  const bare = plainly(text)
    .trim()
    .replace(/^(?:in|en)\s+(?=.)/, '')
    .replace(/^[[(/]\s*|(?<!\s)\s*[)\]:]$/g, '')
  const unit = unitAt(bare, 0)
  return unit && unit.end === bare.length ? unit.symbol : null
}

/** The unit at the end of a label: `Voltage (V)`, `Weight [kg]`, `Length in mm`, `Power, W`. */
export function unitInLabel(text: string): string | null {
  const label = plainly(text)
    .trim()
    .replace(/(?<![:*])[:*]+$/, '')
    .trim()
  const form = /(?:[[(]\s*([^\s()[\]][^()[\]]{0,11})\s*[)\]]|\s(?:in|en)\s+(\S{1,10})|[,/]\s*(\S{1,8}))$/
  const match = form.exec(label)
  const found = match?.[1] ?? match?.[2] ?? match?.[3]
  if (found) return unitAlone(found)
  const inside = /[[(]\s*([^\s()[\]][^()[\]]{0,11})\s*[)\]]/g
  for (const [, text] of label.matchAll(inside)) {
    const unit = unitAlone(text!)
    if (unit) return unit
  }
  return null
}

const numberForm =
  /(?:\d{1,3} )?\d{1,2}\/(?:2|4|8|16|32|64)(?= ?(?:in\b|"))|\d{1,3}(?:[ '](?=\d{3}(?!\d)))\d{3}(?:[.,]\d+)?|\d+(?:[.,]\d+)*/g

/** All numbers of a text with their units; a unit behind the last side of a size or end of a range is that of all. */
export function numbersIn(text: string, decimal: Decimal): readonly Printed[] {
  const line = plainly(text)
  const found: Printed[] = []
  for (const match of line.matchAll(numberForm)) {
    const start = match.index
    const between = line.slice(found.at(-1)?.end ?? 0, start)
    if (/\p{L}$/u.test(between) && !/^\s*x$/i.test(between)) continue
    const end = start + match[0].length
    const before = line.slice(found.at(-1)?.end ?? 0, start)
    const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(match[0])
    const number = fraction ? match[0] : canonical(match[0], decimal)
    if (number === null) continue
    const sign = /(±|\+ ?\/ ?-|\+-|[-+])\s?$/.exec(before)?.[1] ?? ''
    const spread = sign.length > 1 || sign === '±'
    const unit = unitAt(line, end)
    const join = found.length === 0 ? (spread ? 'spread' : null) : spread ? 'spread' : joined(before, sign)
    // `-40-85`: the second dash is that of the range
    const dash = join === 'range' && sign === '-' && !/(?:\.\.|~|to|bis|a|à|tot|\/|-)\s*-\s?$/.test(before.trimEnd())
    const signed = spread || dash ? '' : (sign as '+' | '-' | '')
    const size = fraction ? Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]) : Number(number)
    const value = size * (signed === '-' ? -1 : 1)
    found.push({
      number: signed === '-' ? `-${number}` : number,
      value,
      unit: unit?.symbol ?? null,
      join,
      signed,
      start,
      end: unit?.end ?? end,
    })
  }
  return shareUnits(found)
}

function joined(before: string, sign: string): Printed['join'] {
  const between = before
    .replace(/[-+]\s?$/, '')
    .trim()
    .replace(/[()[\]]/g, '')
    .trim()
  if (/^[x*]$/i.test(between) || /^(?:x|by)$/i.test(between)) return 'by'
  if (/^(?:\.{2,3}|~|to|bis|a|à|tot|-|and|und|al|\.{2}|\/)$/i.test(between)) return between === '/' ? 'slash' : 'range'
  if (between === '' && sign) return 'range'
  return null
}

function shareUnits(found: Printed[]): readonly Printed[] {
  for (let i = found.length - 2; i >= 0; i--) {
    const next = found[i + 1]!
    if (found[i]!.unit === null && next.join && next.unit) found[i] = { ...found[i]!, unit: next.unit }
  }
  return found
}

/** Digits and a decimal point; null where the signs make no number. */
function canonical(digits: string, decimal: Decimal): string | null {
  const tight = digits.replace(/[ ']/g, '')
  const other = decimal === '.' ? ',' : '.'
  const [whole = '', ...rest] = tight.split(decimal)
  if (rest.length > 1) return null
  const groups = whole.split(other)
  if (groups.length > 1 && groups.slice(1).some((group) => group.length !== 3)) {
    // written the other way round in one place: `7.2` on a sheet of commas
    return groups.length === 2 && rest.length === 0 ? `${groups[0]}.${groups[1]}` : null
  }
  return groups.join('') + (rest.length ? `.${rest[0]}` : '')
}

/** What most numbers of a sheet have before their last one or two digits. */
export function decimalOf(texts: readonly string[]): Decimal {
  let commas = 0
  let points = 0
  for (const text of texts) {
    commas += text.match(/(?<![\d.,])\d+,\d{1,2}(?![\d.,])/g)?.length ?? 0
    points += text.match(/(?<![\d.,])\d+\.\d{1,2}(?![\d.,])/g)?.length ?? 0
  }
  return commas > points ? ',' : '.'
}
