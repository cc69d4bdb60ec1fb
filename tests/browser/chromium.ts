import { existsSync } from 'node:fs'
import { type Browser, chromium, type Page } from 'playwright-core'

/** Where Debian's package puts it; CHROMIUM says another place. */
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium'

/** Without a window, a sandbox (which containers forbid) or a word to the network. */
const args = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** @throws Error where there is no Chromium: a browser test that is skipped proves nothing */
export async function openChromium(): Promise<Browser> {
  if (!existsSync(executablePath)) {
    throw new Error(
      `there is no Chromium at ${executablePath}; install Debian's package chromium, or say in CHROMIUM where it is`,
    )
  }
  return chromium.launch({ executablePath, args })
}

/** A page with a script as a site would give it, without a server: no request leaves the browser. */
export async function pageWith(browser: Browser, script: string): Promise<Page> {
  const page = await browser.newPage()
  const site = 'http://paperjig.test/'
  await page.route('**/*', route =>
    route.request().url() === `${site}page.js`
      ? route.fulfill({ contentType: 'text/javascript', body: script })
      : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>Paperjig</title>' }),
  )
  await page.goto(site)
  await page.addScriptTag({ type: 'module', url: `${site}page.js` })
  return page
}
