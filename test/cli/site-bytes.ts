import path from 'node:path'
import {everyByte} from './command.ts'

/** Every file of a site with its bytes, but for the receipt, which says when each came to stand there. */
export function everySiteByte(folder: string): ReadonlyMap<string, string> {
  const receipt = path.join('.scalepan', 'receipt.json')
  return new Map([...everyByte(folder)].filter(([file]) => file !== receipt))
}
