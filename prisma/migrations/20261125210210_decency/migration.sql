-- AlterTable
ALTER TABLE "Board" ADD COLUMN     "overAt" TIMESTAMP(3);

-- AlterTable
ALTER TABLE "Group" ADD COLUMN     "school" JSONB;

-- AlterTable
ALTER TABLE "Person" ADD COLUMN     "alias" TEXT;

-- CreateTable
CREATE TABLE "Report" (
    "id" TEXT NOT NULL,
    "boardId" TEXT NOT NULL,
    "reporterId" TEXT NOT NULL,
    "about" TEXT NOT NULL,
    "subjectId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "pictureId" TEXT,
    "quoted" TEXT NOT NULL DEFAULT '',
    "words" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "seenAt" TIMESTAMP(3),
    "closedAt" TIMESTAMP(3),
    "closedById" TEXT,
    "outcome" TEXT,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "Report_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Block" (
    "blockerId" TEXT NOT NULL,
    "blockedId" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "shownAs" TEXT NOT NULL,

    CONSTRAINT "Block_pkey" PRIMARY KEY ("blockerId","blockedId")
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "id" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorId" TEXT NOT NULL,
    "did" TEXT NOT NULL,
    "boardId" TEXT,
    "groupId" TEXT,
    "sentence" TEXT NOT NULL,

    CONSTRAINT "AuditEntry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Deletion" (
    "id" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "boardId" TEXT NOT NULL,
    "groupId" TEXT,
    "boardTitle" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "pictures" INTEGER NOT NULL,
    "remarks" INTEGER NOT NULL,
    "whole" BOOLEAN NOT NULL,

    CONSTRAINT "Deletion_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Report_boardId_at_idx" ON "Report"("boardId", "at");

-- CreateIndex
CREATE INDEX "Report_reporterId_idx" ON "Report"("reporterId");

-- CreateIndex
CREATE INDEX "Block_blockedId_idx" ON "Block"("blockedId");

-- CreateIndex
CREATE INDEX "AuditEntry_at_idx" ON "AuditEntry"("at");

-- CreateIndex
CREATE INDEX "AuditEntry_boardId_at_idx" ON "AuditEntry"("boardId", "at");

-- CreateIndex
CREATE INDEX "Deletion_at_idx" ON "Deletion"("at");

-- CreateIndex
CREATE INDEX "Deletion_boardId_idx" ON "Deletion"("boardId");

-- CreateIndex
CREATE UNIQUE INDEX "Person_alias_key" ON "Person"("alias");

-- AddForeignKey
ALTER TABLE "Report" ADD CONSTRAINT "Report_boardId_fkey" FOREIGN KEY ("boardId") REFERENCES "Board"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Report" ADD CONSTRAINT "Report_reporterId_fkey" FOREIGN KEY ("reporterId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Block" ADD CONSTRAINT "Block_blockerId_fkey" FOREIGN KEY ("blockerId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Block" ADD CONSTRAINT "Block_blockedId_fkey" FOREIGN KEY ("blockedId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;
