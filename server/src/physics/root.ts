/**
 * Root of a continuous function between two points where it has opposite signs, by inverse quadratic interpolation where
 * that is safe and halving where not.
 *
 * @param f    the function
 * @param a    one end
 * @param b    the other end
 * @param fa   f(a), of the other sign than fb
 * @param fb   f(b)
 * @returns    where f is 0, to 4 units in the last place of the larger end; never outside [a, b]
 * @source T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145-149
 */
export function bracketedRoot(f: (x: number) => number, a: number, b: number, fa: number, fb: number): number {
  const tolerance = 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))
  let c = a
  let fc = fa
  let t = 0.5
  ;[a, fa, b, fb] = [b, fb, a, fa]
  for (let step = 0; step < 200; step++) {
    const x = a + t * (b - a)
    const fx = f(x)
    if (fx === 0) return x
    if (Math.sign(fx) === Math.sign(fa)) [c, fc] = [a, fa]
    else [c, fc, b, fb] = [b, fb, a, fa]
    ;[a, fa] = [x, fx]
    const best = Math.abs(fa) < Math.abs(fb) ? a : b
    const limit = tolerance / Math.abs(b - c)
    if (!(limit <= 0.5)) return best
    t = interpolated(a, b, c, fa, fb, fc)
    t = Math.min(1 - limit, Math.max(limit, t))
  }
  return a
}

/** Where between a and b to look next, as a share of the way: interpolated where three points allow it, else the middle. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b)
  const phi = (fa - fb) / (fc - fb)
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
}
