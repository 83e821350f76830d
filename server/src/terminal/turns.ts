/** Puts what comes from several at once in order: all of the first, then all of the second, and so on. */
export interface Turns<T> {
  take(whose: number, some: readonly T[]): void
  /** Nothing more comes from that one. */
  end(whose: number): void
}

/** @param next  is given each as soon as all before it were */
export function createTurns<T>(next: (one: T) => void): Turns<T> {
  const waiting = new Map<number, T[]>()
  const ended = new Set<number>()
  let turn = 0
  return {
    take(whose, some) {
      if (whose === turn) for (const one of some) next(one)
      else waiting.set(whose, [...(waiting.get(whose) ?? []), ...some])
    },
    end(whose) {
      ended.add(whose)
      while (ended.has(turn)) {
        turn++
        for (const one of waiting.get(turn) ?? []) next(one)
        waiting.delete(turn)
      }
    },
  }
}
