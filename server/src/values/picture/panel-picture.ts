import type { Measure } from '../../records/field.ts'
import type { Panel } from '../../records/records.generated.ts'
import type { Site } from '../site.ts'
import { curvesOf, type Curve } from './curves.ts'
import { heatOf, type Heat } from './heat.ts'
import { inCatalogue } from '../../wording/phrase.ts'

/** Everything that the pictures of a panel show, in SI units; null and absent is not known. */
export interface PanelPicture {
  readonly kind: 'panel'
  readonly name: string
  readonly curves: readonly Curve[]
  /** What was typed and lies on one of the curves. */
  readonly typed: readonly TypedPoint[]
  readonly heat: Heat | null
  readonly outline: Outline | null
  /** What is not drawn, and what it would need. */
  readonly missing: readonly string[]
}

/** A pair of typed ratings. */
export interface TypedPoint {
  /** Id of the curve that it belongs to. */
  readonly curve: Curve['id']
  readonly name: string
  readonly volt: number
  readonly ampere: number
  /** The field that it is read from. */
  readonly pointer: string
  readonly text: string
}

export interface Outline {
  readonly length_m: number
  readonly width_m: number
  readonly length: Side
  readonly width: Side
  readonly thickness: Side | null
  readonly weight: Side | null
}

/** A field as typed. */
export interface Side {
  readonly text: string
  readonly pointer: string
}

export function panelPicture(panel: Panel, id: string, site: Site): PanelPicture {
  const curves = curvesOf(panel, site)
  const heat = heatOf(panel, site)
  const outline = outlineOf(panel)
  return {
    kind: 'panel',
    name: panel.name?.text ?? id,
    curves,
    typed: typedPoints(panel),
    heat,
    outline,
    missing: [
      ...(curves.length > 0
        ? []
        : [inCatalogue`Curves need five ratings and the coefficients of Pmax and Voc that one diode can have.`]),
      ...(heat ? [] : [inCatalogue`Power against temperature needs Pmax and its coefficient.`]),
      ...(outline ? [] : [inCatalogue`The outline needs length and width.`]),
    ],
  }
}

function typedPoints({ stc, noct }: Panel): readonly TypedPoint[] {
  return [
    ...ratings('stc', '/stc', stc.voc, stc.isc, stc.vmp, stc.imp),
    ...ratings('noct', '/noct', noct.voc, noct.isc, noct.vmp, noct.imp),
  ]
}

function ratings(
  curve: Curve['id'],
  group: string,
  voc: Measure | undefined,
  isc: Measure | undefined,
  vmp: Measure | undefined,
  imp: Measure | undefined,
): readonly TypedPoint[] {
  const positive = (field: Measure | undefined) => field !== undefined && field.value > 0
  return [
    ...(positive(isc)
      ? [{ curve, name: 'Isc', volt: 0, ampere: isc!.value, pointer: `${group}/isc`, text: isc!.text }]
      : []),
    ...(positive(vmp) && positive(imp)
      ? [
          {
            curve,
            name: 'Vmp',
            volt: vmp!.value,
            ampere: imp!.value,
            pointer: `${group}/vmp`,
            text: `${vmp!.text}, ${imp!.text}`,
          },
        ]
      : []),
    ...(positive(voc)
      ? [{ curve, name: 'Voc', volt: voc!.value, ampere: 0, pointer: `${group}/voc`, text: voc!.text }]
      : []),
  ]
}

function outlineOf({ size, weight }: Panel): Outline | null {
  const { length, width, thickness } = size
  if (!length || !width || length.value <= 0 || width.value <= 0) return null
  return {
    length_m: length.value,
    width_m: width.value,
    length: side(length)!,
    width: side(width)!,
    thickness: side(thickness),
    weight: side(weight),
  }
}

const side = (field: Measure | undefined): Side | null => (field ? { text: field.text, pointer: field.pointer } : null)
