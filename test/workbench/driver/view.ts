import type { FrameLocator, Page } from 'playwright-core'

/** The inside of the view beside the editor, which lies in a frame of a frame. */
export const viewIn = (page: Page): FrameLocator =>
  page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame')
