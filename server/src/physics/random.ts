/**
 * A random number and the state that gives the next one; the same state always gives the same pair. Good enough for
 * weather, not for secrets.
 *
 * @param state  any whole number; it is the seed of the first call
 * @returns      value in [0, 1) and next state
 * @source G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014, 453-472; 32-bit
 *         mixing constants of the murmur hash
 */
export function random(state: number): { readonly value: number; readonly state: number } {
  const next = (state + 0x9e3779b9) | 0
  let z = next
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
  return { value: ((z ^ (z >>> 16)) >>> 0) / 2 ** 32, state: next }
}
