export type { BedShare, CountNeed, FloorNeed, LiningNeed, Need, VolumeNeed } from "./need.ts";
export type { NotSold } from "./not-sold.ts";
export type {
  BoardPrice,
  GoodsPrice,
  GoodsSize,
  KitPrice,
  PriceForm,
  PriceLine,
  SheetPrice,
} from "./price-line.ts";
export type { Bought, ReceiptLine, SizeShown, YardReceipt } from "./receipt.ts";
export { type SalesTaxOptions, salesTax } from "./sales-tax.ts";
export { shareOut } from "./share-out.ts";
export { type BedCost, shareReceipts } from "./share-receipts.ts";
export { type YardReceiptOptions, yardReceipt } from "./yard-receipt.ts";
export type { YardTerms } from "./yard-terms.ts";
