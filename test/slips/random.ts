/** Numbers from 0 to 1 by a linear congruence (numbers of W. H. Press et al., "Numerical Recipes", from memory). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** What is drawn with a source of numbers from 0 to 1. */
export function drawn(random: () => number) {
  return {
    within: (low: number, high: number) => low + (high - low) * random(),
    pick: <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!,
    chance: (share: number) => random() < share,
  }
}
