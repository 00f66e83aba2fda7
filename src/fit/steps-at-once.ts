/**
 * How many steps an amount changes by so that it is a whole number of steps for other numbers of
 * servings too: for 4, 6 and 8 the amount for 4 is a multiple of 2 steps, for 5 and 6 that for 5 one
 * of 5 steps. (x·n/serves is whole for each n exactly when x·gcd/serves is: Bézout's identity.)
 * @param serves servings of the recipe as written, from 1 up
 * @param others other numbers of servings, from 1 up; none gives 1
 */
export function stepsAtOnce(serves: number, others: readonly number[]): number {
  return serves / others.reduce(greatestCommonDivisor, serves)
}

function greatestCommonDivisor(left: number, right: number): number {
  return right === 0 ? left : greatestCommonDivisor(right, left % right)
}
