import { homedir } from 'node:os'
import { join } from 'node:path'

/**
 * Where what belongs to the user is kept from call to call: a folder of our own in the one that the system sets aside.
 *
 * Source: XDG Base Directory Specification 0.8; on Windows the folder that APPDATA names
 */
export function configFolder(env: NodeJS.ProcessEnv, platform = process.platform, home = homedir()): string {
  if (env.XDG_CONFIG_HOME?.startsWith('/')) return join(env.XDG_CONFIG_HOME, 'paperjig')
  switch (platform) {
    case 'win32':
      return join(env.APPDATA ?? join(home, 'AppData', 'Roaming'), 'paperjig')
    case 'darwin':
      return join(home, 'Library', 'Preferences', 'paperjig')
    default:
      return join(home, '.config', 'paperjig')
  }
}
