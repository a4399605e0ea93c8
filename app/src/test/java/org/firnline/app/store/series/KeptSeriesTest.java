package org.firnline.app.store.series;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.LongStream;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.Stores;
import org.firnline.app.store.database.Dialect;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource
class KeptSeriesTest {
  @Parameter Dialect dialect;
  @TempDir Path root;

  private OpenStore store;
  private KeptSeries series;
  private StoredSeries stored;
  private long id;

  @BeforeEach
  void open() throws IOException {
    store = Stores.open(dialect, root);
    series = new KeptSeries(store.database(), store.changes());
    stored = new StoredSeries(store.database());
    store.dryers().add("Fen 2", "shelves", "Shelf dryer", "");
    long file = store.files().keep(new ByteArrayInputStream(new byte[] {1}), "log.csv").id();
    long run = store.runs().add("run", store.dryers().list().get(0).id(), file, Optional.empty());
    id = series.add(run, "Shelf", "°C");
    assertThat(stored.list(run)).containsExactly(new SeriesName(id, "Shelf", "°C"));
  }

  @AfterEach
  void close() {
    store.close();
  }

  private static Samples samples(int from, int to) {
    long[] times = LongStream.range(from, to).map(n -> 1_000 * n).toArray();
    return new Samples(times, LongStream.of(times).mapToDouble(t -> t % 7 / 10.0).toArray());
  }

  @Test
  void grows_sample_by_sample_and_in_large_pieces() {
    for (int n = 0; n < 50; n++) {
      series.append(id, samples(n, n + 1));
    }
    series.append(id, samples(50, 10_000));
    series.append(id, samples(10_000, 10_001));
    series.append(id, Samples.none());
    assertThat(stored.read(id)).isEqualTo(samples(0, 10_001));
    assertThat(stored.firstAltered(id)).isEmpty();
    assertThat(stored.read(id, 9_000_000, 9_001_000).size()).isLessThan(5_000);
  }

  @Test
  void r_rec_06_a_flipped_bit_is_found_with_its_block() {
    series.append(id, samples(0, 10_000));
    byte[] packed =
        store
            .database()
            .sql("select packed from series_block where position = 1")
            .query((row, number) -> row.getBytes("packed"))
            .single();
    packed[packed.length / 2] ^= 1;
    store
        .database()
        .sql("update series_block set packed = :packed where position = 1")
        .param("packed", packed)
        .update();
    assertThat(stored.firstAltered(id)).contains(1L);
    store.database().sql("delete from series_block where position = 0").update();
    assertThat(stored.firstAltered(id)).contains(0L);
  }
}
