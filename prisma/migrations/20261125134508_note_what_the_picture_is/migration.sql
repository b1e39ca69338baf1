-- AlterTable
ALTER TABLE "Picture" ADD COLUMN     "drying" TEXT,
ADD COLUMN     "light" TEXT,
ADD COLUMN     "medium" TEXT;
