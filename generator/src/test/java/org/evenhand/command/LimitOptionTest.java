package org.evenhand.command;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LimitOptionTest {

    @TempDir
    private Path folder;

    @Test
    void aLimitIsLoweredAndTheFindingTellsHowToRaiseIt() {
        Given.soundFolderIn(folder);
        Called.with("check", folder.toString(), "--limit", "log-rows=2")
                .ended(1)
                .says("2 samples of a log are read", "--limit log-rows=NUMBER");
        Called.with("check", folder.toString(), "--limit", "log-rows=1000000", "--limit", "file-depth=20")
                .ended(0);
    }

    @Test
    void publishingHoldsLimitsToo(@TempDir Path target) {
        Given.soundFolderIn(folder);
        Called.with("publish", folder.toString(), "--to", target.resolve("site").toString(), "--limit", "log-columns=1")
                .ended(1)
                .says("size-limit");
    }

    @Test
    void sealingHoldsLimitsToo() {
        Given.soundFolderIn(folder);
        String study = new java.io.File(folder.toFile(), "studies").list()[0];
        Called.with("seal", study, "--in", folder.toString(), "--limit", "log-columns=1")
                .ended(1)
                .says("size-limit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"file-byts=5", "file-bytes=0", "file-bytes=-3", "file-bytes=many", "file-bytes"})
    void aLimitThatIsNoneIsToldOf(String written) {
        Called.with("check", folder.toString(), "--limit", written).ended(2).says("usage: ");
    }
}
