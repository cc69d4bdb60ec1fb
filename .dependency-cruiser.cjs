/**
 * Who may import whom. This table is the map in DEVELOPERS.md; CI holds it.
 * Left of the colon a folder of src, right of it the folders of src it may import besides itself.
 */
const mayImport = {
  number: [],
  length: ['number'],
  geometry: ['number'],
  finding: ['length', 'number'],
  text: ['geometry', 'number'],
  yaml: ['length', 'finding'],
  plan: ['yaml', 'length', 'finding'],
  workshop: ['yaml', 'length', 'finding', 'number'],
  model: ['plan', 'workshop', 'geometry', 'length', 'finding', 'number'],
  check: ['model', 'workshop', 'geometry', 'length', 'finding', 'number'],
  shop: ['model', 'workshop', 'geometry', 'length', 'finding', 'number'],
  drawing: ['geometry', 'text'],
  sheet: ['shop', 'model', 'workshop', 'finding', 'drawing', 'text', 'geometry', 'length', 'number'],
  paper: ['workshop', 'drawing', 'text', 'geometry', 'length', 'number'],
  render: ['drawing', 'text', 'geometry', 'number'],
  app: [
    'number',
    'length',
    'geometry',
    'finding',
    'text',
    'yaml',
    'plan',
    'workshop',
    'model',
    'check',
    'shop',
    'drawing',
    'sheet',
    'paper',
    'render',
  ],
  cli: ['app', 'length', 'finding'],
  view: ['app', 'drawing', 'geometry', 'length', 'finding'],
}

const folders = Object.keys(mayImport)

module.exports = {
  forbidden: [
    ...folders.map(folder => ({
      name: `${folder}-imports`,
      severity: 'error',
      from: { path: `^src/${folder}/` },
      to: { path: '^src/', pathNot: `^src/(${[folder, ...mayImport[folder]].join('|')})/` },
    })),
    {
      name: 'runs-in-a-browser',
      comment: 'Only the command line and the server of the local page touch Node.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(cli|view/server)/' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-circles', severity: 'error', from: { path: '^src/' }, to: { circular: true } },
    {
      name: 'every-folder-on-the-map',
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/(${folders.join('|')})/` },
      to: {},
    },
    {
      name: 'src-never-imports-tests',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(tests|tools)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types'] },
  },
}
