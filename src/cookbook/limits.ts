/**
 * How much a cookbook may hold. Far above what a kitchen writes, low enough that a file which is
 * not what it seems is refused before it costs memory or minutes.
 */
export const limits = {
  /** One Markdown or YAML file, bytes. A long recipe is about 10,000. */
  textFileBytes: 1_048_576,
  /** One composition table, bytes. The largest national tables are about 10 million. */
  tableFileBytes: 67_108_864,
  /** Foods of one composition table. The largest national ones have about 10,000. */
  tableRows: 100_000,
  /** One picture, bytes. */
  imageFileBytes: 33_554_432,
  /** One SVG, bytes: it is read sign by sign. */
  svgFileBytes: 1_048_576,
  /** All pictures together, bytes: they are held in memory during a build. */
  allImagesBytes: 1_073_741_824,
  /** Files in one of the cookbook's folders. */
  folderFiles: 10_000,
  /** Ingredient lines of one recipe. A feast has about 60. */
  recipeIngredients: 1_000,
  /** Components within one another. A layered cake has about 4. */
  componentLevels: 50,
} as const
