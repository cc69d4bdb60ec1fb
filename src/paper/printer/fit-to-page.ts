import { papers } from '../papers.ts'

/** A page of one paper that was made smaller, or larger, to fit the part of another that a printer reaches. */
export type FitToPage = { readonly page: string; readonly sheet: string }

/**
 * The edges that printers leave free, in millimetres: none, an inkjet's, a laser printer's, a quarter of an inch. Common
 * practice, no source.
 */
const edges = [0, 3, 25.4 / 6, 25.4 / 4]

/** Two readings with a rule are no better than this share. */
const alike = 0.006

/**
 * The page and sheet whose "fit to page" would give these two errors, the nearest of all; nothing where the errors differ
 * from each other or nothing is near.
 */
export function fitToPage(across: number, along: number): FitToPage | undefined {
  if (Math.abs(across - along) > alike) return undefined
  const found = (across + along) / 2
  const cases = Object.values(papers).flatMap(page =>
    Object.values(papers).flatMap(sheet =>
      edges.map(edge => ({
        page: page.name,
        sheet: sheet.name,
        miss: Math.abs(
          Math.min((sheet.width - 2 * edge) / page.width, (sheet.height - 2 * edge) / page.height) - found,
        ),
      })),
    ),
  )
  const { page, sheet, miss } = cases.reduce((a, b) => (b.miss < a.miss ? b : a))
  return miss > alike ? undefined : { page, sheet }
}
