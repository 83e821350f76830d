import { sayFrom, type Phrases } from '../../findings/message.ts'

/** What may have happened to a value: it completes "22.1 V (decimal point moved)". */
export const reasons = {
  id: 'typos',
  messages: {
    digitsSwapped: 'digits swapped',
    digitDropped: 'digit dropped',
    digitDoubled: 'digit doubled',
    neighbouringKey: 'neighbouring key hit',
    pointDropped: 'decimal point dropped',
    pointMoved: 'decimal point moved',
    signLost: 'minus sign lost',
    exchanged: '{first} and {second} exchanged',
    unitForUnit: '{typed} typed for {meant}',
    bothSides: '{typed} typed for {meant} on both sides',
    fractionAsPercent: 'a fraction typed as percent',
    ofModuleAsPercent: '{unit}/°C for the module typed as percent',
    milliamperes: 'milliamperes typed as amperes',
    valueAtNoct: 'the value at NOCT typed',
    product: 'Vmp times Imp',
    productAtNoct: 'Vmp times Imp at NOCT',
    overImp: 'Pmax over Imp',
    overImpAtNoct: 'Pmax over Imp at NOCT',
    overVmp: 'Pmax over Vmp',
    overVmpAtNoct: 'Pmax over Vmp at NOCT',
    overArea: 'Pmax over the area',
    ofSiblings: 'the value of its siblings',
    usualCount: 'another usual cell count',
    otherCount: 'another cell count',
    halfCells: 'half-cells counted twice',
    unknown: 'another value',
  },
} as const satisfies Phrases

export const reason = sayFrom(reasons)
