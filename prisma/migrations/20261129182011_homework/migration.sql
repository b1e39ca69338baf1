-- CreateTable
CREATE TABLE "Homework" (
    "id" TEXT NOT NULL,
    "boardId" TEXT NOT NULL,
    "pictureId" TEXT NOT NULL,
    "painterId" TEXT NOT NULL,
    "setById" TEXT NOT NULL,
    "setAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "cardKey" TEXT,
    "words" TEXT NOT NULL,
    "check" TEXT NOT NULL DEFAULT '',
    "dueOn" TEXT NOT NULL,
    "answerAs" TEXT NOT NULL,
    "answerId" TEXT,
    "answeredAt" TIMESTAMP(3),
    "closedAt" TIMESTAMP(3),
    "withdrawnAt" TIMESTAMP(3),

    CONSTRAINT "Homework_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Homework_boardId_setAt_idx" ON "Homework"("boardId", "setAt");

-- CreateIndex
CREATE INDEX "Homework_painterId_idx" ON "Homework"("painterId");

-- AddForeignKey
ALTER TABLE "Homework" ADD CONSTRAINT "Homework_boardId_fkey" FOREIGN KEY ("boardId") REFERENCES "Board"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Homework" ADD CONSTRAINT "Homework_pictureId_fkey" FOREIGN KEY ("pictureId") REFERENCES "Picture"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Homework" ADD CONSTRAINT "Homework_answerId_fkey" FOREIGN KEY ("answerId") REFERENCES "Picture"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Homework" ADD CONSTRAINT "Homework_painterId_fkey" FOREIGN KEY ("painterId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Homework" ADD CONSTRAINT "Homework_setById_fkey" FOREIGN KEY ("setById") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;
