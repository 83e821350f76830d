/** Where the temperature of each mounting comes from, and how far it can be trusted; for hovers and reports. */
export const mountingSources = {
  'open rack': {
    model: 'Ross, with the sheet’s own NOCT',
    source: 'definition of NOCT, IEC 61215; R. G. Ross, 15th IEEE PVSC (1981)',
    uncertainty: 'good: about 3 K either way at 1000 W/m2 and a light wind',
  },
  standoff: {
    model: 'Ross, NOCT 2 K higher (about 75 mm of air behind)',
    source: 'M. K. Fuentes, SAND85-0330 (1987)',
    uncertainty: 'fair: depends on how freely air enters and leaves; about 5 K either way',
  },
  canvas: {
    model: 'Ross, NOCT 11 K higher (about 25 mm of air behind)',
    source: 'M. K. Fuentes, SAND85-0330 (1987), for a rigid module with that gap',
    uncertainty: 'an estimate: no measurement of a panel on canvas is published; about 10 K either way',
  },
  bonded: {
    model: 'Ross, NOCT 18 K higher (no air behind)',
    source:
      'M. K. Fuentes, SAND85-0330 (1987); agrees with 0.0563 K m2/W of Skoplaki and Palyvos (2009) for a roof without ventilation',
    uncertainty:
      'good on a still day over an insulated deck: published coefficients lie between 0.048 and 0.060 K m2/W, 6 K either way',
  },
} as const
