#!/usr/bin/env node
import process from 'node:process'
import { loadCommand } from './compiled/load.ts'
import { optimiseLater } from './optimise-later.ts'

optimiseLater()

// who reads our output may stop before the end, as `head` does; that is no fault
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
}

process.exitCode = await loadCommand().run(process.argv.slice(2), process)
