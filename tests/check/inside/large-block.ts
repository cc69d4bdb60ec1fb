/**
 * A block with about so many holes on its six faces, as a plan: grids of stopped holes that come as near to those of
 * the other faces as they may, so that the rules have near pairs to look at and nothing to find. Every tenth row or so
 * leans.
 */
export function largeBlock(holes: number): string {
  const pitch = 12
  // a cube whose six faces share the holes
  const across = Math.max(2, Math.round(Math.sqrt(holes / 6)))
  const margin = 24
  const size = 2 * margin + (across - 1) * pitch
  const faces = [
    ['front', 'left', 'bottom', 'right'],
    ['back', 'left', 'bottom', 'right'],
    ['left', 'bottom', 'front', 'top'],
    ['right', 'bottom', 'front', 'top'],
    ['top', 'left', 'front', 'right'],
    ['bottom', 'left', 'front', 'right'],
  ] as const
  const rows = faces.flatMap(([face, along, over, toward]) =>
    Array.from({ length: across }, (_, i) => {
      const lean = i % 10 === 5 ? `, lean: { toward: ${toward}, angle: 2 }` : ''
      return `      - { row: ${face}-${i + 1}, on: ${face}, at: { ${along}: ${margin}, ${over}: ${margin + i * pitch} }, toward: ${toward}, spacing: ${pitch}, count: ${across}, diameter: 5, depth: 18${lean} }\n`
    }),
  )
  return `paperjig: 1\ntitle: Punch-card block of a loom\nunits: mm\nparts:\n  block:\n    size: ${size} x ${size} x ${size}\n    cuts:\n${rows.join('')}`
}
