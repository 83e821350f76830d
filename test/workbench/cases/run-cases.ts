export interface Outcome {
  readonly name: string
  readonly ms: number
  readonly problem: string | null
}

const limit = 60_000

/** Runs every case inside the extension host, beside the extension; `report` gets all outcomes so far after each of them. */
export async function runCases(
  cases: Readonly<Record<string, () => Promise<void>>>,
  report: (outcomes: readonly Outcome[]) => void,
): Promise<void> {
  const outcomes: Outcome[] = []
  for (const [name, attempt] of Object.entries(cases)) {
    const began = Date.now()
    const problem = await Promise.race([
      attempt().then(
        () => null,
        (error: unknown) => String((error as Error).stack ?? error),
      ),
      new Promise<string>((resolve) => setTimeout(() => resolve(`no end after ${limit} ms`), limit)),
    ])
    outcomes.push({ name, ms: Date.now() - began, problem })
    console.log(`${problem ? 'FAILED' : 'passed'} ${name} ${Date.now() - began} ms ${problem ?? ''}`)
    report(outcomes)
  }
  const failed = outcomes.filter(({ problem }) => problem)
  if (failed.length) throw new Error(`${failed.length} of ${outcomes.length} cases failed`)
}
