import { takeApart } from '../../server/src/slips/typos/printed.ts'
import type { Evidence, Reading } from '../../server/src/slips/evidence.ts'

const factors: Readonly<Record<string, number>> = {
  W: 1,
  kW: 1e3,
  mV: 1e-3,
  V: 1,
  A: 1,
  '%': 0.01,
  mm: 1e-3,
  cm: 1e-2,
  m: 1,
  in: 0.0254,
  '%/°C': 0.01,
  '°C': 1,
  '°F': 1 / 1.8,
  'V/°C': 1,
  '': 1,
}

/** Printed texts by pointer as evidence. */
export function evidence(
  technology: string,
  texts: Readonly<Record<string, string>>,
  construction = 'rigid',
): Evidence {
  const readings: Record<string, Reading> = {}
  for (const [pointer, text] of Object.entries(texts)) {
    const parts = takeApart(text)
    if (!parts) throw new Error(`no number in ${text}`)
    const factor = factors[parts.rest.trim()]
    if (factor === undefined) throw new Error(`no unit in ${text}`)
    const decimals = parts.number.split('.')[1]?.length ?? 0
    const zero = parts.rest.trim() === '°F' ? -32 / 1.8 : 0
    readings[pointer] = { value: Number(parts.number) * factor + zero, half: 0.5 * 10 ** -decimals * factor, text }
  }
  return { technology, construction, readings }
}

/** An invented flexible panel that hangs together. */
export const tern: Readonly<Record<string, string>> = {
  '/cells/in_series': '36',
  '/stc/pmax': '110 W',
  '/stc/vmp': '18.6 V',
  '/stc/imp': '5.92 A',
  '/stc/voc': '22.1 V',
  '/stc/isc': '6.31 A',
  '/stc/efficiency': '17.1 %',
  '/temperature_coefficients/pmax': '-0.38 %/°C',
  '/temperature_coefficients/voc': '-0.29 %/°C',
  '/temperature_coefficients/isc': '0.05 %/°C',
  '/noct/temperature': '46 °C',
  '/noct/pmax': '81 W',
  '/noct/vmp': '17.2 V',
  '/noct/imp': '4.71 A',
  '/size/length': '1190 mm',
  '/size/width': '540 mm',
}
