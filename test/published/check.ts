/** One number of ours against one that somebody else printed. */
export interface Check {
  readonly check: string
  readonly source: string
  readonly ours: number
  readonly theirs: number
  /** Allowed difference: half a unit of the last printed digit, or what the row's source says of itself. */
  readonly within: number
}

/** A row whose tolerance is half a unit of the last digit of the text, such as '67.5' or '3.2246e-10'. */
export function printed(check: string, source: string, ours: number, theirs: string): Check {
  return { check, source, ours, theirs: Number(theirs), within: halfUnit(theirs) * 1.0001 }
}

/** A row whose tolerance is a share of the value. */
export function relative(check: string, source: string, ours: number, theirs: number, share: number): Check {
  return { check, source, ours, theirs, within: Math.abs(theirs) * share }
}

/** A row with a tolerance of its own, in the value's unit; the check or the source says why. */
export function about(check: string, source: string, ours: number, theirs: number, within: number): Check {
  return { check, source, ours, theirs, within }
}

function halfUnit(text: string): number {
  const [mantissa = '', exponent = '0'] = text.split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(exponent) - decimals)
}
