import { afterEach } from 'vitest'

/** Takes a picture of the window after each test of a suite that fails. */
export function pictureFailures(
  here: () => { readonly picture: (name: string) => Promise<unknown> } | undefined,
): void {
  afterEach(async ({ task }) => {
    if (task.result?.state === 'fail') await here()?.picture(`failed-${task.name.replaceAll(/\W+/g, '-')}`)
  })
}
