export const allFacts: unknown[] = []
