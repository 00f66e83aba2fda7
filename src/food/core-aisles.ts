import {baking} from './core/baking.ts'
import {breads} from './core/breads.ts'
import {condiments} from './core/condiments.ts'
import {dairy} from './core/dairy.ts'
import {drinks} from './core/drinks.ts'
import {eggs} from './core/eggs.ts'
import {fats} from './core/fats.ts'
import {fish} from './core/fish.ts'
import {fruit} from './core/fruit.ts'
import {grains} from './core/grains.ts'
import {herbsAndSpices} from './core/herbs-and-spices.ts'
import {meat} from './core/meat.ts'
import {nuts} from './core/nuts.ts'
import {poultry} from './core/poultry.ts'
import {prepared} from './core/prepared.ts'
import {pulses} from './core/pulses.ts'
import {sweeteners} from './core/sweeteners.ts'
import {vegetables} from './core/vegetables.ts'
import type {Aisle} from './food.ts'

/** The core table's text, one food a line, by the aisle whose file it stands in. */
export const coreAisles: readonly {readonly aisle: Aisle; readonly text: string}[] = [
  {aisle: 'vegetables', text: vegetables},
  {aisle: 'fruit', text: fruit},
  {aisle: 'herbs and spices', text: herbsAndSpices},
  {aisle: 'dairy', text: dairy},
  {aisle: 'eggs', text: eggs},
  {aisle: 'meat', text: meat},
  {aisle: 'poultry', text: poultry},
  {aisle: 'fish', text: fish},
  {aisle: 'fats', text: fats},
  {aisle: 'breads', text: breads},
  {aisle: 'grains', text: grains},
  {aisle: 'pulses', text: pulses},
  {aisle: 'baking', text: baking},
  {aisle: 'sweeteners', text: sweeteners},
  {aisle: 'nuts', text: nuts},
  {aisle: 'condiments', text: condiments},
  {aisle: 'prepared', text: prepared},
  {aisle: 'drinks', text: drinks},
]
