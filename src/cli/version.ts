import about from '../../package.json' with { type: 'json' }

export const version: string = about.version
