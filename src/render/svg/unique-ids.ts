/** Gives ids that are valid, unique in one file and near to the name asked for. */
export function uniqueIds(): (name: string) => string {
  const taken = new Set<string>()
  return name => {
    const plain = name.replace(/[^A-Za-z0-9_.-]+/g, '-')
    // an id starts with a letter or an underline
    const valid = /^[A-Za-z_]/.test(plain) ? plain : `_${plain}`
    let id = valid
    for (let n = 2; taken.has(id); n++) id = `${valid}-${n}`
    taken.add(id)
    return id
  }
}
