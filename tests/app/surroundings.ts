import type { Surroundings } from '../../src/app/inputs.ts'
import { fontFiles } from '../text/bundled-font.ts'

/** The bundled fonts and a version, as the command line hands them over; no date, as where it is not told. */
export const surroundings: Surroundings = {
  fonts: { regular: fontFiles('regular'), bold: fontFiles('bold') },
  version: '0',
}
