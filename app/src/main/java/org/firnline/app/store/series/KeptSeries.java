package org.firnline.app.store.series;

import java.util.Arrays;
import java.util.Optional;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Unaudited;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The series of a run, one per channel. An append is one transaction: after a crash its samples are
 * all there or none. Samples are never changed; each block holds the hash of the one before it.
 */
@Repository
public class KeptSeries {
  private static final AuditedTable SERIES = AuditedTable.of("series");

  private final JdbcClient database;
  private final Changes changes;
  private final StoredSeries stored;

  /** Series in this database. */
  public KeptSeries(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
    this.stored = new StoredSeries(database);
  }

  /** Starts the series of a channel. */
  public long add(long runId, String channel, String unit) {
    return changes.add(
        SERIES,
        () ->
            database
                .sql(
                    """
                    insert into series (run_id, channel, unit)
                    values (:run_id, :channel, :unit)
                    returning id
                    """)
                .param("run_id", runId)
                .param("channel", channel)
                .param("unit", unit)
                .query(Long.class)
                .single());
  }

  /** Adds samples at the end. */
  public void append(long seriesId, Samples samples) {
    if (samples.size() == 0) {
      return;
    }
    changes.together(
        () -> {
          Optional<StoredSeries.Block> open = stored.lastBlock(seriesId);
          long position = open.map(StoredSeries.Block::position).orElse(0L);
          Samples kept =
              open.map(block -> SeriesCodec.unpack(block.packed())).orElseGet(Samples::none);
          if (kept.size() >= SeriesCodec.FULL_BLOCK) {
            position++;
            kept = Samples.none();
          }
          Samples all = kept.then(samples);
          for (int from = 0; from < all.size(); from += SeriesCodec.FULL_BLOCK) {
            int to = Math.min(all.size(), from + SeriesCodec.FULL_BLOCK);
            put(seriesId, position++, all.between(from, to));
          }
          return seriesId;
        });
  }

  @Unaudited("samples arrive by the minute; each block holds the hash of the one before it")
  private void put(long seriesId, long position, Samples samples) {
    byte[] packed = SeriesCodec.pack(samples);
    String previous =
        database
            .sql("select hash from series_block where series_id = :id and position = :position")
            .param("id", seriesId)
            .param("position", position - 1)
            .query(String.class)
            .optional()
            .orElse("");
    database
        .sql(
            """
            insert into series_block
              (series_id, position, samples, first_ms, last_ms, packed, hash)
            values (:series_id, :position, :samples, :first_ms, :last_ms, :packed, :hash)
            on conflict (series_id, position) do update
            set samples = excluded.samples, first_ms = excluded.first_ms,
                last_ms = excluded.last_ms, packed = excluded.packed, hash = excluded.hash
            """)
        .param("series_id", seriesId)
        .param("position", position)
        .param("samples", samples.size())
        .param("first_ms", Arrays.stream(samples.time_ms()).min().orElse(0))
        .param("last_ms", Arrays.stream(samples.time_ms()).max().orElse(0))
        .param("packed", packed)
        .param("hash", StoredSeries.chained(previous, packed))
        .update();
  }
}
