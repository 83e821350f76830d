import type { Frame, FrameLocator, Page } from 'playwright-core'

/** The inside of the view beside the editor, which lies in a frame of a frame. */
export const viewIn = (page: Page): FrameLocator =>
  page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame')

/** Which share of the page of a sheet is not white: a page that was not drawn has none. */
export const inked = (frame: Frame): Promise<number> =>
  frame.locator('.paper canvas').evaluate((element) => {
    const canvas = element as HTMLCanvasElement
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height)
    let dark = 0
    for (let at = 0; at < data.length; at += 4) if (data[at]! < 128) dark++
    return dark / (data.length / 4)
  })
