-- CreateTable
CREATE TABLE "Ask" (
    "id" TEXT NOT NULL,
    "boardId" TEXT NOT NULL,
    "pictureId" TEXT NOT NULL,
    "askedById" TEXT NOT NULL,
    "askedOfId" TEXT,
    "words" TEXT NOT NULL DEFAULT '',
    "askedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "promisedFor" TEXT,
    "promisedById" TEXT,
    "answeredAt" TIMESTAMP(3),
    "answeredById" TEXT,
    "withdrawnAt" TIMESTAMP(3),

    CONSTRAINT "Ask_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Phrase" (
    "id" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "place" INTEGER NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Phrase_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Look" (
    "boardId" TEXT NOT NULL,
    "personId" TEXT NOT NULL,
    "at" TIMESTAMP(3) NOT NULL,
    "seen" JSONB NOT NULL,

    CONSTRAINT "Look_pkey" PRIMARY KEY ("boardId","personId")
);

-- CreateIndex
CREATE INDEX "Ask_boardId_askedAt_idx" ON "Ask"("boardId", "askedAt");

-- CreateIndex
CREATE INDEX "Phrase_personId_place_idx" ON "Phrase"("personId", "place");

-- CreateIndex
CREATE INDEX "Look_personId_idx" ON "Look"("personId");

-- AddForeignKey
ALTER TABLE "Ask" ADD CONSTRAINT "Ask_boardId_fkey" FOREIGN KEY ("boardId") REFERENCES "Board"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Ask" ADD CONSTRAINT "Ask_pictureId_fkey" FOREIGN KEY ("pictureId") REFERENCES "Picture"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Ask" ADD CONSTRAINT "Ask_askedById_fkey" FOREIGN KEY ("askedById") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Phrase" ADD CONSTRAINT "Phrase_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Look" ADD CONSTRAINT "Look_boardId_fkey" FOREIGN KEY ("boardId") REFERENCES "Board"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Look" ADD CONSTRAINT "Look_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE CASCADE ON UPDATE CASCADE;
